package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Contrast against time through published or measured points: repeated times averaged, made
 * monotone by pooling adjacent violators, joined by a monotone cubic. Read in both directions,
 * never beyond its ends.
 *
 * <p>Pooling: least squares under the condition that contrast never falls with time, weights 1/sd².
 * Cubic: F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, 1980; the limiter
 * is the circle of radius 3.
 */
public final class ContrastCurve {
  private final double[] seconds;
  private final double[] contrast;
  private final double[] slope;
  private final List<ContrastPoint> moved;

  private ContrastCurve(double[] seconds, double[] contrast, List<ContrastPoint> moved) {
    this.seconds = seconds;
    this.contrast = contrast;
    this.moved = List.copyOf(moved);
    this.slope = MonotoneCubic.slopes(seconds, contrast);
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
    double[] pooled = pooled(averaged);
    List<ContrastPoint> moved = new ArrayList<>();
    for (int i = 0; i < pooled.length; i++) {
      if (Math.abs(pooled[i] - averaged.get(i).contrast()) > 1e-12) {
        moved.add(averaged.get(i));
      }
    }
    return new ContrastCurve(seconds, pooled, moved);
  }

  /** The points that had to be moved to make the curve rise, as they were read. */
  public List<ContrastPoint> moved() {
    return moved;
  }

  /** Shortest time of the points, in seconds. */
  public double firstSeconds() {
    return seconds[0];
  }

  /** Longest time of the points, in seconds. */
  public double lastSeconds() {
    return seconds[seconds.length - 1];
  }

  /** Contrast at a time [-]; empty beyond the points. */
  public OptionalDouble contrastAt(double atSeconds) {
    if (atSeconds < firstSeconds() || atSeconds > lastSeconds()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(MonotoneCubic.at(seconds, contrast, slope, atSeconds));
  }

  /**
   * Time in seconds at which a contrast is reached; empty beyond the points. Where the curve is
   * level at that contrast, the middle of the level part.
   */
  public OptionalDouble secondsFor(double wanted) {
    int last = contrast.length - 1;
    if (wanted < contrast[0] || wanted > contrast[last]) {
      return OptionalDouble.empty();
    }
    double early = bisect(wanted, true);
    double late = bisect(wanted, false);
    return OptionalDouble.of((early + late) / 2);
  }

  private double bisect(double wanted, boolean earliest) {
    double low = firstSeconds();
    double high = lastSeconds();
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double value = MonotoneCubic.at(seconds, contrast, slope, middle);
      if (value < wanted || (value == wanted && !earliest)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
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

  /** Pool adjacent violators. */
  private static double[] pooled(List<ContrastPoint> points) {
    int n = points.size();
    double[] value = new double[n];
    double[] weight = new double[n];
    int[] length = new int[n];
    int blocks = 0;
    for (ContrastPoint point : points) {
      value[blocks] = point.contrast();
      weight[blocks] = 1 / Math.max(point.sd() * point.sd(), 1e-12);
      length[blocks] = 1;
      blocks++;
      while (blocks > 1 && value[blocks - 2] > value[blocks - 1]) {
        double total = weight[blocks - 2] + weight[blocks - 1];
        value[blocks - 2] =
            (value[blocks - 2] * weight[blocks - 2] + value[blocks - 1] * weight[blocks - 1])
                / total;
        weight[blocks - 2] = total;
        length[blocks - 2] += length[blocks - 1];
        blocks--;
      }
    }
    double[] out = new double[n];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < length[block]; i++) {
        out[at++] = value[block];
      }
    }
    return out;
  }
}
