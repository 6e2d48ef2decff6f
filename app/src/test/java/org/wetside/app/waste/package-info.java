/** The book of waste over a real home. */
@NullMarked
package org.wetside.app.waste;

import org.jspecify.annotations.NullMarked;
