package org.wetside.core.development;

import java.util.Optional;
import java.util.function.BiPredicate;

/** The ratio of two series of one film, at the printed temperature they share. */
final class PairRatio {
  private PairRatio() {}

  /**
   * ln(time of the second / time of the first) at the common printed temperature nearest to this
   * one; empty when they share none and neither spans the other there.
   */
  static Optional<Double> ln(TimeSeries from, TimeSeries to, double celsius) {
    if (from.spans(celsius) && to.spans(celsius)) {
      return Optional.of(to.lnSecondsAt(celsius) - from.lnSecondsAt(celsius));
    }
    double best = Double.POSITIVE_INFINITY;
    double ratio = 0;
    for (int i = 0; i < from.size(); i++) {
      int j = to.at(from.celsius(i));
      double away = Math.abs(from.celsius(i) - celsius);
      if (j >= 0 && away < best) {
        best = away;
        ratio = to.lnSeconds(j) - from.lnSeconds(i);
      }
    }
    return best == Double.POSITIVE_INFINITY ? Optional.empty() : Optional.of(ratio);
  }

  /** Same film, developer, format and way of agitating; what may differ is for the caller. */
  static final BiPredicate<TimeSeries, TimeSeries> COMPARABLE =
      (one, other) ->
          one.first().filmCode().equals(other.first().filmCode())
              && one.first().developer().equals(other.first().developer())
              && one.first().format().covers(other.first().format())
              && one.first().agitation().serves(other.first().agitation())
              && one.first().contrast().equals(other.first().contrast());
}
