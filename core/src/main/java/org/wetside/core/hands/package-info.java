/**
 * Two tanks, one pair of hands: when a run wants them, where two runs want them at once, and what
 * may last longer so that they do not.
 *
 * <p>Runs as they stand come in; windows of attention, clashes, lengthenings and start moments come
 * out. Open {@link org.wetside.core.hands.FreeHands} first.
 */
@NullMarked
package org.wetside.core.hands;

import org.jspecify.annotations.NullMarked;
