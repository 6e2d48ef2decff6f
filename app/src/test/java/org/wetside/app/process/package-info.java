/** Own processes on a real database. */
@NullMarked
package org.wetside.app.process;

import org.jspecify.annotations.NullMarked;
