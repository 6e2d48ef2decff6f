package org.wetside.web.trial;

import java.util.Optional;
import org.wetside.core.quantity.Units;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialOutcome;

/**
 * A test that speaks for or against one roll: of its washing, or of a fixer it was fixed in, made
 * since.
 *
 * @param test its number
 * @param kind clearing, iodide or residue
 * @param title how it is headed
 * @param endedAt when it was judged
 * @param outcome passed, failed or not judged
 * @param text what was seen, in one sentence
 * @param meaning what that means for the roll, and what to do
 */
public record FilmTestView(
    long test,
    String kind,
    String title,
    String endedAt,
    String outcome,
    String text,
    String meaning) {
  /** The view of a test that is over; empty while it runs. */
  public static Optional<FilmTestView> of(Trial trial, Units units) {
    return trial.end().map(end -> of(trial, end, units));
  }

  private static FilmTestView of(Trial trial, TrialEnd end, Units units) {
    return new FilmTestView(
        trial.id(),
        trial.kind().word(),
        trial.kind().title(),
        end.at().toString(),
        end.outcome().word(),
        new TestWords(units).of(trial),
        meaning(trial.kind(), end.outcome()));
  }

  /** Whether something is to be done about the roll. */
  public boolean isBad() {
    return outcome.equals("failed");
  }

  private static String meaning(TrialKind kind, TrialOutcome outcome) {
    boolean passed = outcome instanceof TrialOutcome.Passed;
    if (!passed && !(outcome instanceof TrialOutcome.Failed)) {
      return "It says nothing of this roll.";
    }
    if (kind == TrialKind.RESIDUE) {
      return passed
          ? "It is washed, as far as this test can tell."
          : "Thiosulfate is left in the film, which stains and fades with the years: wash it again,"
              + " and test again.";
    }
    return passed
        ? "The fixer this roll was fixed in still worked afterwards."
        : "The fixer this roll was fixed in was spent: if it was not fixed again since, fix it in a"
            + " tested one and wash it as if it were new.";
  }
}
