/**
 * Tests of baths as small timed acts: what is done in which order, what is timed, what it is
 * compared with, and what came of it.
 *
 * <p>Enters: a guide read from a cited file, the moment it was started, what was seen. Leaves: an
 * outcome, passed or failed only where that can honestly be said. Open {@link
 * org.wetside.core.trial.ClearingRule} first.
 */
@NullMarked
package org.wetside.core.trial;

import org.jspecify.annotations.NullMarked;
