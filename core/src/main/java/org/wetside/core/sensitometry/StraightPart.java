package org.wetside.core.sensitometry;

/**
 * The longest straight part of a curve: the longest run of neighbouring steps within 0.01 of their
 * least-squares line. Base and shoulder are straight too, so runs much less steep than the steepest
 * do not count.
 */
final class StraightPart {
  private static final int FEWEST_STEPS = 4;
  private static final double MOST_RESIDUAL = 0.01;

  /** Share of the steepest run's slope below which a run belongs to toe or shoulder. */
  private static final double STEEP_ENOUGH = 0.8;

  private final double[] x;
  private final double[] y;
  private final double[] sumX;
  private final double[] sumY;
  private final double[] sumXx;
  private final double[] sumXy;

  private StraightPart(double[] x, double[] y) {
    int n = x.length;
    this.x = x;
    this.y = y;
    sumX = new double[n + 1];
    sumY = new double[n + 1];
    sumXx = new double[n + 1];
    sumXy = new double[n + 1];
    for (int i = 0; i < n; i++) {
      double from = x[i] - x[0];
      sumX[i + 1] = sumX[i] + from;
      sumY[i + 1] = sumY[i] + y[i];
      sumXx[i + 1] = sumXx[i] + from * from;
      sumXy[i + 1] = sumXy[i] + from * y[i];
    }
  }

  /** Its slope [-]; NaN when no four neighbouring steps lie on a line. */
  static double slope(double[] x, double[] y) {
    return new StraightPart(x, y).longest();
  }

  /** A run begun one step later ends no earlier: both ends only move on. */
  private double longest() {
    double least = STEEP_ENOUGH * steepest();
    double longest = -1;
    double found = Double.NaN;
    int last = 0;
    for (int first = 0; first + FEWEST_STEPS <= x.length; first++) {
      last = Math.max(last, first + FEWEST_STEPS - 1);
      if (!holds(first, last)) {
        continue;
      }
      while (last + 1 < x.length && holds(first, last + 1)) {
        last++;
      }
      double slope = slope(first, last);
      if (slope >= least && x[last] - x[first] > longest) {
        longest = x[last] - x[first];
        found = slope;
      }
    }
    return found;
  }

  private double steepest() {
    double steepest = 0;
    for (int first = 0; first + FEWEST_STEPS <= x.length; first++) {
      int last = first + FEWEST_STEPS - 1;
      if (holds(first, last)) {
        steepest = Math.max(steepest, slope(first, last));
      }
    }
    return steepest;
  }

  private double slope(int first, int last) {
    double n = last - first + 1;
    double sx = sumX[last + 1] - sumX[first];
    double sy = sumY[last + 1] - sumY[first];
    double sxx = sumXx[last + 1] - sumXx[first];
    double sxy = sumXy[last + 1] - sumXy[first];
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
  }

  private boolean holds(int first, int last) {
    double slope = slope(first, last);
    double n = last - first + 1;
    double start = (sumY[last + 1] - sumY[first] - slope * (sumX[last + 1] - sumX[first])) / n;
    for (int i = first; i <= last; i++) {
      if (Math.abs(y[i] - start - slope * (x[i] - x[0])) > MOST_RESIDUAL) {
        return false;
      }
    }
    return true;
  }
}
