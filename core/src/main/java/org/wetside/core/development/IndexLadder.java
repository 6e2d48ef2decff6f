package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Series of one film, developer, dilution and tank at rising exposure indexes: the printed rungs
 * between which a push is read geometrically.
 */
final class IndexLadder {
  /**
   * The way from one index to another on the rungs.
   *
   * @param lnFactor ln of the ratio of the times
   * @param rungs the series used, two for each stretch
   */
  record Climb(double lnFactor, List<TimeSeries> rungs) {}

  private final List<TimeSeries> rungs;

  private IndexLadder(List<TimeSeries> rungs) {
    this.rungs = rungs;
  }

  /** From the series that stand at different indexes; of equal indexes the first counts. */
  static IndexLadder of(List<TimeSeries> candidates) {
    List<TimeSeries> rungs = new ArrayList<>();
    for (TimeSeries one : candidates) {
      if (one.hasIndex() && rungs.stream().noneMatch(rung -> rung.sameIndex(one.index()))) {
        rungs.add(one);
      }
    }
    rungs.sort(Comparator.comparingDouble(TimeSeries::index));
    return new IndexLadder(rungs);
  }

  /** ln ratio per stop of each stretch between neighbouring rungs that overlaps the range. */
  List<Double> perStop(double from, double to, double celsius) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i + 1 < rungs.size(); i++) {
      TimeSeries low = rungs.get(i);
      TimeSeries high = rungs.get(i + 1);
      if (low.index() < Math.max(from, to) && high.index() > Math.min(from, to)) {
        double stops = TimeSeries.stopsBetween(low.index(), high.index());
        PairRatio.ln(low, high, celsius).ifPresent(ratio -> out.add(ratio / stops));
      }
    }
    return out;
  }

  /** Empty when the rungs do not reach from one index to the other. */
  Optional<Climb> climb(double from, double to, double celsius) {
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    if (rungs.size() < 2
        || TimeSeries.stopsBetween(rungs.get(0).index(), low) < 0
        || TimeSeries.stopsBetween(high, rungs.get(rungs.size() - 1).index()) < 0) {
      return Optional.empty();
    }
    double ln = 0;
    List<TimeSeries> used = new ArrayList<>();
    for (int i = 0; i + 1 < rungs.size(); i++) {
      TimeSeries below = rungs.get(i);
      TimeSeries above = rungs.get(i + 1);
      double share = share(below.index(), above.index(), low, high);
      if (share > 1e-9) {
        Optional<Double> ratio = PairRatio.ln(below, above, celsius);
        if (ratio.isEmpty()) {
          return Optional.empty();
        }
        ln += share * ratio.get();
        used.add(below);
        used.add(above);
      }
    }
    return used.isEmpty()
        ? Optional.empty()
        : Optional.of(new Climb(to >= from ? ln : -ln, List.copyOf(used)));
  }

  /** Which part of the stretch between two rungs lies between two indexes, counted in stops. */
  private static double share(double below, double above, double low, double high) {
    double whole = Math.log(above / below);
    double start = Math.max(Math.log(below), Math.log(low));
    double end = Math.min(Math.log(above), Math.log(high));
    double part = Math.max(0, end - start) / whole;
    return part > 0.97 ? 1 : part < 0.03 ? 0 : part;
  }
}
