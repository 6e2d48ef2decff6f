/**
 * Runs at the Bench: opening one from a load, following its plan against the clock, taking what
 * screens send, and settling bottles and rolls at the end.
 *
 * <p>Enters: a load, events from screens, the passing of time. Leaves: stored events, and snapshots
 * of where each run stands. Open {@link org.wetside.app.bench.Bench} first.
 */
@NullMarked
package org.wetside.app.bench;

import org.jspecify.annotations.NullMarked;
