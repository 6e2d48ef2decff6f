package org.wetside.core.sensitometry;

import java.util.Arrays;

/**
 * Piecewise cubic Hermite curve through points that never fall, which never falls either and never
 * overshoots: read in both directions, never beyond its ends.
 *
 * <p>F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, 1980 (from memory);
 * the limiter is the circle of radius 3.
 */
final class MonotoneCubic {
  private static final double CIRCLE = 3;
  private static final int MOST_STEPS = 80;
  private static final double TIGHT = 1e-14;

  private final double[] x;
  private final double[] y;
  private final double[] slope;

  private MonotoneCubic(double[] x, double[] y, double[] slope) {
    this.x = x;
    this.y = y;
    this.slope = slope;
  }

  /** Through at least two points; x rising, y not falling. The arrays are kept, not copied. */
  static MonotoneCubic through(double[] x, double[] y) {
    return new MonotoneCubic(x, y, slopes(x, y));
  }

  double firstX() {
    return x[0];
  }

  double lastX() {
    return x[x.length - 1];
  }

  double firstY() {
    return y[0];
  }

  double lastY() {
    return y[y.length - 1];
  }

  /** Value at a place; NaN beyond the ends. */
  double at(double place) {
    if (!(place >= firstX() && place <= lastX())) {
      return Double.NaN;
    }
    int found = Arrays.binarySearch(x, place);
    if (found >= 0) {
      return y[found];
    }
    int low = -found - 2;
    double width = x[low + 1] - x[low];
    double u = (place - x[low]) / width;
    double v = 1 - u;
    return (1 + 2 * u) * v * v * y[low]
        + u * v * v * width * slope[low]
        + u * u * (3 - 2 * u) * y[low + 1]
        - u * u * v * width * slope[low + 1];
  }

  /**
   * Place of a value; the middle of the level part where it is level there; NaN beyond the ends.
   */
  double placeOf(double value) {
    if (!(value >= firstY() && value <= lastY())) {
      return Double.NaN;
    }
    int high = firstAtLeast(value);
    if (y[high] == value) {
      int last = high;
      while (last + 1 < y.length && y[last + 1] == value) {
        last++;
      }
      return (x[high] + x[last]) / 2;
    }
    return solve(high - 1, value);
  }

  private int firstAtLeast(double value) {
    int low = 0;
    int high = y.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (y[middle] >= value) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Newton's steps inside a piece, halved whenever one would leave the bracket. */
  private double solve(int piece, double value) {
    double width = x[piece + 1] - x[piece];
    double rise = y[piece + 1] - y[piece];
    double c1 = width * slope[piece];
    double c2 = 3 * rise - 2 * c1 - width * slope[piece + 1];
    double c3 = c1 + width * slope[piece + 1] - 2 * rise;
    double wanted = value - y[piece];
    double low = 0;
    double high = 1;
    double u = wanted / rise;
    for (int i = 0; i < MOST_STEPS; i++) {
      double miss = u * (c1 + u * (c2 + u * c3)) - wanted;
      if (miss < 0) {
        low = u;
      } else {
        high = u;
      }
      double steep = c1 + u * (2 * c2 + 3 * u * c3);
      double next = u - miss / steep;
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - u) < TIGHT) {
        return x[piece] + next * width;
      }
      u = next;
    }
    return x[piece] + u * width;
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] secant = new double[n - 1];
    for (int i = 0; i < n - 1; i++) {
      secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    double[] slope = new double[n];
    slope[0] = secant[0];
    slope[n - 1] = secant[n - 2];
    for (int i = 1; i < n - 1; i++) {
      slope[i] = secant[i - 1] * secant[i] <= 0 ? 0 : (secant[i - 1] + secant[i]) / 2;
    }
    for (int i = 0; i < n - 1; i++) {
      if (secant[i] == 0) {
        slope[i] = 0;
        slope[i + 1] = 0;
      } else {
        double radius = Math.hypot(slope[i] / secant[i], slope[i + 1] / secant[i]);
        if (radius > CIRCLE) {
          slope[i] *= CIRCLE / radius;
          slope[i + 1] *= CIRCLE / radius;
        }
      }
    }
    return slope;
  }
}
