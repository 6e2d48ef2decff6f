package org.wetside.web.shelf;

import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialOutcome;

/** What is said of a clip that was timed elsewhere, once it is kept. */
final class TimedElsewhere {
  private TimedElsewhere() {}

  static String said(Trial trial) {
    TrialOutcome outcome = trial.end().map(TrialEnd::outcome).orElseThrow();
    String book = "Noted of bottle " + trial.bottle() + ": clip test ";
    return outcome instanceof TrialOutcome.NotComparable not
        ? book + "kept, but it vouches for no roll: " + String.join("; ", not.why()) + "."
        : book + outcome.word() + ".";
  }
}
