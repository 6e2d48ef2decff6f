/**
 * What happened in a run: events, the table of what is allowed when, and the state as a fold.
 *
 * <p>Enters: the steps that were planned and the events in their order. Leaves: a {@link
 * org.wetside.core.run.RunState} with every moment planned and actual, and the answer to one more
 * event. Pure: no clock, no disk. Open {@link org.wetside.core.run.RunState} first.
 */
@NullMarked
package org.wetside.core.run;

import org.jspecify.annotations.NullMarked;
