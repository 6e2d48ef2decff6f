package org.wetside.core.trial;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;

/**
 * Judges a clearing time. The time of a clip in fresh solution is the baseline; later ones are
 * compared with it only for the same film, the same dilution and nearly the same temperature.
 */
public final class ClearingRule {
  private final ClearingLimits limits;

  /** By these limits. */
  public ClearingRule(ClearingLimits limits) {
    this.limits = limits;
  }

  /**
   * A clip has cleared.
   *
   * @param taken the time it took; as a baseline when the solution was fresh
   * @param baseline the time in fresh solution, if one was taken
   */
  public TrialOutcome cleared(Clearing taken, Optional<Clearing> baseline) {
    if (taken.baseline()) {
      return new TrialOutcome.BaselineMade();
    }
    List<Difference> differences = differences(taken, baseline);
    if (!differences.isEmpty()) {
      return new TrialOutcome.NotComparable(differences);
    }
    double times = times(taken.time(), baseline.orElseThrow());
    // a time written in tenths of a second must not miss the double by a rounding
    return times >= limits.spentTimes() - 1e-9
        ? new TrialOutcome.Failed(OptionalDouble.of(times))
        : new TrialOutcome.Passed(OptionalDouble.of(times));
  }

  /**
   * A clip was taken out before it was clear. That it is spent can be said only when it was left
   * for as long as a spent fixer takes.
   *
   * @param left how long it was left, under which conditions
   * @param baseline the time in fresh solution, if one was taken
   */
  public TrialOutcome notClear(Clearing left, Optional<Clearing> baseline) {
    if (baseline.isEmpty() || left.baseline() || !differences(left, baseline).isEmpty()) {
      return new TrialOutcome.NotJudged(
          "it was not clear after "
              + clock(left.time())
              + ", and there is nothing to compare with");
    }
    double times = times(left.time(), baseline.get());
    return times >= limits.spentTimes() - 1e-9
        ? new TrialOutcome.Failed(OptionalDouble.of(times))
        : new TrialOutcome.NotJudged(
            "it was taken out after "
                + clock(left.time())
                + "; spent is said only from "
                + clock(spentAt(baseline.get())));
  }

  /** The clearing time from which the fixer is spent. */
  public Duration spentAt(Clearing baseline) {
    return TimeSpan.ofSeconds(limits.spentTimes() * TimeSpan.toSeconds(baseline.time()));
  }

  /** What is in the way of comparing; empty when nothing is. */
  public List<Difference> differences(Clearing taken, Optional<Clearing> baseline) {
    if (baseline.isEmpty()) {
      return List.of(Difference.NO_BASELINE);
    }
    Clearing first = baseline.get();
    List<Difference> found = new ArrayList<>();
    if (!taken.film().equalsIgnoreCase(first.film())) {
      found.add(Difference.FILM);
    }
    if (!taken.dilution().equalsIgnoreCase(first.dilution())) {
      found.add(Difference.DILUTION);
    }
    double apart = taken.temperature().minus(first.temperature()).abs().kelvins();
    if (apart > limits.within().kelvins() + 1e-9) {
      found.add(Difference.TEMPERATURE);
    }
    return found;
  }

  private static double times(Duration taken, Clearing baseline) {
    return TimeSpan.toSeconds(taken) / TimeSpan.toSeconds(baseline.time());
  }

  private static String clock(Duration time) {
    long seconds = time.toSeconds();
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
