/**
 * Where a number comes from and how far it is to be believed.
 *
 * <p>Enters: what a data row says of itself. Leaves: a {@link org.wetside.core.source.Standing} and
 * a {@link org.wetside.core.source.Citation} that travel with the number to the screen. Open {@link
 * org.wetside.core.source.Standing} first.
 */
@NullMarked
package org.wetside.core.source;

import org.jspecify.annotations.NullMarked;
