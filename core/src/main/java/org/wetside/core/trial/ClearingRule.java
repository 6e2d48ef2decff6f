package org.wetside.core.trial;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.ClearingComparison;

/**
 * Judges a clearing time. The time of a clip in fresh solution is the baseline; later ones are
 * compared with it only where {@link ClearingComparison} allows it.
 */
public final class ClearingRule {
  /** Why a time in used solution is no baseline. */
  public static final String USED =
      "film was fixed in this bottle since it was mixed, so it is no fresh solution";

  private ClearingRule() {}

  /**
   * A clip has cleared.
   *
   * @param taken the time it took; as a baseline when the solution was fresh
   * @param baseline the time in fresh solution, if one was taken
   * @param filmSince whether film went through the solution since it was mixed: then no time in it
   *     is one in fresh solution, whatever was said
   */
  public static TrialOutcome cleared(
      Clearing taken, Optional<Clearing> baseline, boolean filmSince) {
    if (taken.baseline()) {
      return filmSince
          ? new TrialOutcome.NotComparable(List.of(USED))
          : new TrialOutcome.BaselineMade();
    }
    ClearingComparison compared = ClearingComparison.of(baseline, taken);
    if (compared instanceof ClearingComparison.Compared like) {
      OptionalDouble times = OptionalDouble.of(like.ratio());
      return like.spent() ? new TrialOutcome.Failed(times) : new TrialOutcome.Passed(times);
    }
    return new TrialOutcome.NotComparable(((ClearingComparison.NotComparable) compared).why());
  }

  /**
   * A clip was taken out before it was clear. That the fixer is spent can be said only when it was
   * left for as long as a spent fixer takes.
   *
   * @param left how long it was left, under which conditions
   * @param baseline the time in fresh solution, if one was taken
   */
  public static TrialOutcome notClear(Clearing left, Optional<Clearing> baseline) {
    if (!left.baseline()
        && baseline.isPresent()
        && ClearingComparison.of(baseline, left) instanceof ClearingComparison.Compared like) {
      return like.spent()
          ? new TrialOutcome.Failed(OptionalDouble.of(like.ratio()))
          : new TrialOutcome.NotJudged(
              "it was taken out after "
                  + clock(left.time())
                  + "; spent is said only from "
                  + clock(spentAt(baseline.get())));
    }
    return new TrialOutcome.NotJudged(
        "it was not clear after " + clock(left.time()) + ", and there is nothing to compare with");
  }

  /** The clearing time from which the fixer is spent. */
  public static Duration spentAt(Clearing baseline) {
    return TimeSpan.ofSeconds(ClearingComparison.SPENT_AT * TimeSpan.toSeconds(baseline.time()));
  }

  private static String clock(Duration time) {
    long seconds = time.toSeconds();
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
