/**
 * Bottles and what becomes of them: the label, the ledger that is only ever added to, the state
 * that folds out of it, and what follows: whether to use a bottle, what it can still do, how long
 * to fix, which rolls to fix again.
 *
 * <p>Enters: labels, lines of ledgers, cited keeping times and capacities, the day. Leaves:
 * bottles, verdicts with their reasons, steps to follow. Open {@link
 * org.wetside.core.shelf.BottleState} first.
 */
@NullMarked
package org.wetside.core.shelf;

import org.jspecify.annotations.NullMarked;
