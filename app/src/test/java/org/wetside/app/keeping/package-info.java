/** Tests of {@code org.wetside.app.keeping}, on real databases with real runs. */
@NullMarked
package org.wetside.app.keeping;

import org.jspecify.annotations.NullMarked;
