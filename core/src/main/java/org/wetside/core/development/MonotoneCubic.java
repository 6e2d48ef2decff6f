package org.wetside.core.development;

/** Piecewise cubic Hermite interpolation that never overshoots rising data (Fritsch–Carlson). */
final class MonotoneCubic {
  private MonotoneCubic() {}

  /** Slopes at the knots; x rising, y not falling. */
  static double[] slopes(double[] x, double[] y) {
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
        if (radius > 3) {
          slope[i] *= 3 / radius;
          slope[i + 1] *= 3 / radius;
        }
      }
    }
    return slope;
  }

  /** Value at a place inside the knots. */
  static double at(double[] x, double[] y, double[] slope, double place) {
    int i = java.util.Arrays.binarySearch(x, place);
    if (i >= 0) {
      return y[i];
    }
    int low = Math.min(Math.max(-i - 2, 0), x.length - 2);
    double width = x[low + 1] - x[low];
    double u = (place - x[low]) / width;
    double v = 1 - u;
    return (1 + 2 * u) * v * v * y[low]
        + u * v * v * width * slope[low]
        + u * u * (3 - 2 * u) * y[low + 1]
        - u * u * v * width * slope[low + 1];
  }
}
