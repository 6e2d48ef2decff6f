/**
 * Tests of baths at the Bench: begun with one key, judged with another, kept with their bottle.
 *
 * <p>Enters: a bottle or rolls, what is said of the clip, what was seen. Leaves: a test that runs
 * by the clock of the home, its outcome, and a line in the ledger of its bottle. Open {@link
 * org.wetside.app.trial.StartTest} first.
 */
@NullMarked
package org.wetside.app.trial;

import org.jspecify.annotations.NullMarked;
