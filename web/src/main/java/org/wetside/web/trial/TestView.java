package org.wetside.web.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialOutcome;

/**
 * A test that runs, or what came of it.
 *
 * @param test its number
 * @param kind clearing, leader, iodide or residue
 * @param bottle letter of the bottle; null for a test of film
 * @param rolls whose washing is tested
 * @param film film of the clip; null where there is none
 * @param dilution how the fixer was made; null where there is no clip
 * @param temperatureC of the fixer; null where there is no clip
 * @param fresh whether the solution was fresh; null where there is no clip
 * @param startedAt when the clock began to run
 * @param endedAt when it was judged; null while it runs
 * @param seconds how long it ran; null while it runs
 * @param outcome passed, failed, baseline made, not comparable or not judged; null while it runs
 * @param timesBaseline how many times as long as in fresh solution it took; null where no times are
 *     compared
 * @param differences what is in the way of comparing; empty as a rule
 * @param note why nothing is said, or what else was seen; may be empty
 * @param text in one sentence
 * @param fixing how long to fix by it, at its temperature; empty where nothing good is said
 * @param recall where the rolls to be fixed again are listed; null unless a fixer failed
 */
public record TestView(
    long test,
    String kind,
    @Nullable String bottle,
    List<String> rolls,
    @Nullable String film,
    @Nullable String dilution,
    @Nullable Double temperatureC,
    @Nullable Boolean fresh,
    String startedAt,
    @Nullable String endedAt,
    @Nullable Double seconds,
    @Nullable String outcome,
    @Nullable Double timesBaseline,
    List<String> differences,
    String note,
    String text,
    List<FixView> fixing,
    @Nullable String recall) {
  private static final String RECALL = "/shelf/recall";

  /**
   * How long to fix.
   *
   * @param seconds how long
   * @param times how many times the clearing time that is
   * @param why in words
   * @param standing how that rule is known
   * @param source where it was read
   */
  public record FixView(double seconds, double times, String why, String standing, String source) {
    /** Minutes and seconds. */
    public String time() {
      return TestPage.clock(seconds);
    }
  }

  /** The view of a test. */
  public static TestView of(Trial trial, Units units) {
    Optional<ClipWish> clip = trial.clip();
    Optional<TrialEnd> end = trial.end();
    Optional<TrialOutcome> outcome = end.map(TrialEnd::outcome);
    return new TestView(
        trial.id(),
        trial.kind().word(),
        trial.bottle().isEmpty() ? null : trial.bottle(),
        trial.rolls(),
        clip.map(ClipWish::film).orElse(null),
        clip.map(ClipWish::dilution).orElse(null),
        clip.map(wish -> wish.temperature().celsius()).orElse(null),
        clip.map(ClipWish::fresh).orElse(null),
        trial.startedAt().toString(),
        end.map(last -> last.at().toString()).orElse(null),
        end.map(last -> TimeSpan.toSeconds(last.took())).orElse(null),
        outcome.map(TrialOutcome::word).orElse(null),
        outcome.map(TestView::times).orElse(null),
        outcome.map(TestView::differences).orElse(List.of()),
        note(end),
        new TestWords(units).of(trial),
        FixLines.of(trial),
        trial.kind().ofFixer() && outcome.filter(TrialOutcome.Failed.class::isInstance).isPresent()
            ? RECALL
            : null);
  }

  private static @Nullable Double times(TrialOutcome outcome) {
    OptionalDouble times = OptionalDouble.empty();
    if (outcome instanceof TrialOutcome.Passed passed) {
      times = passed.timesBaseline();
    } else if (outcome instanceof TrialOutcome.Failed failed) {
      times = failed.timesBaseline();
    }
    return times.isPresent() ? times.getAsDouble() : null;
  }

  private static List<String> differences(TrialOutcome outcome) {
    return outcome instanceof TrialOutcome.NotComparable not ? not.why() : List.of();
  }

  private static String note(Optional<TrialEnd> end) {
    if (end.isEmpty()) {
      return "";
    }
    return end.get().outcome() instanceof TrialOutcome.NotJudged not
        ? not.reason()
        : end.get().note();
  }
}
