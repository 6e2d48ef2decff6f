package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Contrast against time through published or measured points: repeated times averaged, made
 * monotone by pooling adjacent violators (weights 1/sd²), joined by a monotone cubic. Read in both
 * directions, never beyond its ends.
 */
public final class ContrastCurve {
  private static final double LEAST_VARIANCE = 1e-12;
  private static final double MOVED = 1e-12;

  private final MonotoneCubic cubic;
  private final List<ContrastPoint> moved;

  private ContrastCurve(MonotoneCubic cubic, List<ContrastPoint> moved) {
    this.cubic = cubic;
    this.moved = List.copyOf(moved);
  }

  /**
   * Through at least two different times.
   *
   * @throws IllegalArgumentException with fewer
   */
  public static ContrastCurve through(List<ContrastPoint> points) {
    List<ContrastPoint> averaged = averaged(points);
    if (averaged.size() < 2) {
      throw new IllegalArgumentException("a curve needs two different times");
    }
    double[] seconds = averaged.stream().mapToDouble(ContrastPoint::seconds).toArray();
    double[] contrast = averaged.stream().mapToDouble(ContrastPoint::contrast).toArray();
    double[] weights = averaged.stream().mapToDouble(ContrastCurve::weight).toArray();
    double[] pooled = MonotoneRepair.of(contrast, weights);
    List<ContrastPoint> moved = new ArrayList<>();
    for (int i = 0; i < pooled.length; i++) {
      if (Math.abs(pooled[i] - contrast[i]) > MOVED) {
        moved.add(averaged.get(i));
      }
    }
    return new ContrastCurve(MonotoneCubic.through(seconds, pooled), moved);
  }

  /** The points that had to be moved to make the curve rise, as they were read. */
  public List<ContrastPoint> moved() {
    return moved;
  }

  /** Shortest time of the points, in seconds. */
  public double firstSeconds() {
    return cubic.firstX();
  }

  /** Longest time of the points, in seconds. */
  public double lastSeconds() {
    return cubic.lastX();
  }

  /** Contrast at the shortest time [-]. */
  public double leastContrast() {
    return cubic.firstY();
  }

  /** Contrast at the longest time [-]. */
  public double mostContrast() {
    return cubic.lastY();
  }

  /** Contrast at a time [-]; empty beyond the points. */
  public OptionalDouble contrastAt(double atSeconds) {
    return found(cubic.at(atSeconds));
  }

  /**
   * Time in seconds at which a contrast is reached; empty beyond the points. Where the curve is
   * level at that contrast, the middle of the level part.
   */
  public OptionalDouble secondsFor(double wanted) {
    return found(cubic.placeOf(wanted));
  }

  private static OptionalDouble found(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static double weight(ContrastPoint point) {
    return 1 / Math.max(point.sd() * point.sd(), LEAST_VARIANCE);
  }

  private static List<ContrastPoint> averaged(List<ContrastPoint> points) {
    List<ContrastPoint> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(ContrastPoint::seconds));
    List<ContrastPoint> out = new ArrayList<>();
    for (int i = 0; i < sorted.size(); ) {
      int end = i;
      double sum = 0;
      double variance = 0;
      while (end < sorted.size() && sorted.get(end).seconds() == sorted.get(i).seconds()) {
        sum += sorted.get(end).contrast();
        variance += sorted.get(end).sd() * sorted.get(end).sd();
        end++;
      }
      int n = end - i;
      out.add(new ContrastPoint(sorted.get(i).seconds(), sum / n, Math.sqrt(variance) / n));
      i = end;
    }
    return out;
  }
}
