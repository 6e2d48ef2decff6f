package org.wetside.store;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.trial.TrialOutcome;

/** What came of a test, as its columns hold it. */
final class OutcomeText {
  /** Between the reasons of one test. */
  private static final String BETWEEN = "\n";

  private OutcomeText() {}

  /** How many times the baseline it took, where that was compared. */
  static Optional<Double> times(TrialOutcome outcome) {
    OptionalDouble times = OptionalDouble.empty();
    if (outcome instanceof TrialOutcome.Passed passed) {
      times = passed.timesBaseline();
    } else if (outcome instanceof TrialOutcome.Failed failed) {
      times = failed.timesBaseline();
    }
    return times.isPresent() ? Optional.of(times.getAsDouble()) : Optional.empty();
  }

  /** Why nothing was said, or what was in the way of comparing. */
  static String reason(TrialOutcome outcome) {
    if (outcome instanceof TrialOutcome.NotComparable not) {
      return String.join(BETWEEN, not.why());
    }
    return outcome instanceof TrialOutcome.NotJudged not ? not.reason() : "";
  }

  static TrialOutcome read(Row row) {
    OptionalDouble times = row.maybeNumber("times_baseline");
    String reason = row.maybeText("reason").orElse("");
    return switch (row.text("outcome")) {
      case "passed" -> new TrialOutcome.Passed(times);
      case "failed" -> new TrialOutcome.Failed(times);
      case "baseline made" -> new TrialOutcome.BaselineMade();
      case "not comparable" -> new TrialOutcome.NotComparable(List.of(reason.split(BETWEEN, -1)));
      default -> new TrialOutcome.NotJudged(reason);
    };
  }
}
