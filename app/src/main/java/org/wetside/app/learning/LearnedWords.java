package org.wetside.app.learning;

import java.util.Locale;
import java.util.Optional;
import org.wetside.core.learning.AcceptedFactor;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.Belief;
import org.wetside.core.learning.ChartPoint;
import org.wetside.core.learning.OwnIndex;
import org.wetside.core.learning.OwnTime;

/** What was learned, in words for people. */
public final class LearnedWords {
  private LearnedWords() {}

  /** For example {@code +8 % ± 5 % from 3 rolls}; the band is nine in ten. */
  public static String factor(Belief lnFactor) {
    double factor = Math.exp(lnFactor.mean());
    return String.format(
        Locale.ROOT,
        "%+.0f %% ± %.0f %% from %d roll%s",
        100 * (factor - 1),
        100 * factor * lnFactor.halfBand(),
        lnFactor.rolls(),
        lnFactor.rolls() == 1 ? "" : "s");
  }

  /** What there is beside the maker's time: offered, in use, or in use while later rolls differ. */
  public static Optional<String> beside(
      Optional<OwnTime> learned, Optional<AcceptedFactor> accepted) {
    if (accepted.isPresent()) {
      String used = factor(accepted.get().belief());
      return Optional.of(
          "yours, in use: "
              + used
              + learned
                  .map(now -> factor(now.belief()))
                  .filter(now -> !now.equals(used))
                  .map(now -> "; your rolls now say " + now + "; use that?")
                  .orElse(""));
    }
    return learned.map(now -> "yours: " + factor(now.belief()) + "; use it?");
  }

  /** The same as {@link #beside} for the index. */
  public static Optional<String> indexBeside(
      Optional<OwnIndex> learned, Optional<AcceptedIndex> accepted) {
    if (accepted.isPresent()) {
      String used = index(accepted.get().index());
      return Optional.of(
          "your index, in use: "
              + used
              + learned
                  .map(LearnedWords::index)
                  .filter(now -> !now.equals(used))
                  .map(now -> "; your rolls now say " + now + "; use that?")
                  .orElse(""));
    }
    return learned.map(now -> "your index: " + index(now) + "; use it?");
  }

  /** For example {@code 280 (200 to 400) where you exposed at 400, from 3 rolls}. */
  public static String index(OwnIndex index) {
    return String.format(
        Locale.ROOT,
        "%.0f (%.0f to %.0f) where you exposed at %.0f, from %d roll%s",
        index.middle().isoArithmetic(),
        index.low().isoArithmetic(),
        index.high().isoArithmetic(),
        index.exposed().isoArithmetic(),
        index.belief().rolls(),
        index.belief().rolls() == 1 ? "" : "s");
  }

  /** For example {@code 283 for 400TX in D-76}. */
  static String indexInUse(AcceptedIndex accepted) {
    return String.format(
        Locale.ROOT,
        "%.0f for %s in %s",
        accepted.index().middle().isoArithmetic(),
        accepted.of().filmCode(),
        accepted.of().developer());
  }

  /** What a roll of the chart raises; empty when nothing. */
  public static String drift(ChartPoint point) {
    if (!point.isFlagged()) {
      return "";
    }
    return (point.drift().isOfTwo() ? "two of the last three rolls" : "this roll")
        + " came out as if developed too "
        + (point.drift().isSlow() ? "little" : "much");
  }
}
