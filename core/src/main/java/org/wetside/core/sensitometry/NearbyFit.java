package org.wetside.core.sensitometry;

/**
 * Levenberg–Marquardt by damped normal equations, for a search that begins near its end: the same
 * formula through resampled densities, thousands of times. From afar, {@link LeastSquares} is the
 * one to use.
 */
final class NearbyFit {
  private static final int MOST_STEPS = 300;
  private static final double FIRST_DAMPING = 1e-4;
  private static final double LEAST_DAMPING = 1e-12;
  private static final double MOST_DAMPING = 1e12;
  private static final double TIGHT = 1e-12;

  private final FitModel model;
  private final double[] x;
  private final int p;
  private final double[][] normal;
  private final double[] right;
  private final double[] gradient;
  private final double[][] factor;

  NearbyFit(FitModel model, double[] x, int parameters) {
    this.model = model;
    this.x = x;
    p = parameters;
    normal = new double[p][p];
    right = new double[p];
    gradient = new double[p];
    factor = new double[p][p];
  }

  LeastSquaresFit from(double[] start, double[] y) {
    double[] best = start.clone();
    double least = equations(best, y);
    double damping = FIRST_DAMPING;
    int calm = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] next = damped(best, damping);
      double squares = next.length == 0 ? Double.POSITIVE_INFINITY : squares(next, y);
      if (squares <= least) {
        calm = least - squares <= TIGHT * least ? calm + 1 : 0;
        best = next;
        least = equations(best, y);
        damping = Math.max(damping / 10, LEAST_DAMPING);
        if (calm == 2) {
          return new LeastSquaresFit(best, least, true);
        }
      } else {
        damping *= 10;
        if (damping > MOST_DAMPING) {
          return new LeastSquaresFit(best, least, true);
        }
      }
    }
    return new LeastSquaresFit(best, least, false);
  }

  /** Fills the normal equations and returns the squares. */
  private double equations(double[] parameters, double[] y) {
    for (int i = 0; i < p; i++) {
      right[i] = 0;
      java.util.Arrays.fill(normal[i], 0);
    }
    double squares = 0;
    for (int k = 0; k < x.length; k++) {
      double left = y[k] - model.value(x[k], parameters, gradient);
      squares += left * left;
      for (int i = 0; i < p; i++) {
        right[i] += gradient[i] * left;
        for (int j = 0; j <= i; j++) {
          normal[i][j] += gradient[i] * gradient[j];
        }
      }
    }
    return squares;
  }

  private double squares(double[] parameters, double[] y) {
    double squares = 0;
    for (int k = 0; k < x.length; k++) {
      double left = y[k] - model.value(x[k], parameters, gradient);
      squares += left * left;
    }
    return squares;
  }

  /** One damped step by Cholesky's factors; empty when they do not exist. */
  private double[] damped(double[] from, double damping) {
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = normal[i][j];
        if (i == j) {
          sum += damping * Math.max(normal[i][i], Double.MIN_NORMAL);
        }
        for (int k = 0; k < j; k++) {
          sum -= factor[i][k] * factor[j][k];
        }
        if (i != j) {
          factor[i][j] = sum / factor[j][j];
        } else if (sum > 0) {
          factor[i][i] = Math.sqrt(sum);
        } else {
          return new double[0];
        }
      }
    }
    double[] step = new double[p];
    for (int i = 0; i < p; i++) {
      double sum = right[i];
      for (int k = 0; k < i; k++) {
        sum -= factor[i][k] * step[k];
      }
      step[i] = sum / factor[i][i];
    }
    for (int i = p - 1; i >= 0; i--) {
      double sum = step[i];
      for (int k = i + 1; k < p; k++) {
        sum -= factor[k][i] * step[k];
      }
      step[i] = sum / factor[i][i];
    }
    for (int i = 0; i < p; i++) {
      step[i] += from[i];
    }
    return step;
  }
}
