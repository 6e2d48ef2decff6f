/**
 * Used chemistry that is collected until it is handed in.
 *
 * <p>Enters: jugs, what was poured into them, how much silver used fixer is said to hold. Leaves:
 * litres, an estimate of silver as the range that was stated, refusals. Open {@link
 * org.wetside.core.waste.FilledJug} first.
 */
@NullMarked
package org.wetside.core.waste;

import org.jspecify.annotations.NullMarked;
