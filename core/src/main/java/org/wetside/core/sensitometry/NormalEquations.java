package org.wetside.core.sensitometry;

import java.util.Arrays;

/**
 * The normal equations of a formula at one set of parameters, and the damped step that they lead
 * to. The arrays are kept and filled anew, because {@link NearbyFit} asks for them ten thousand
 * times.
 */
final class NormalEquations {
  private final FitModel model;
  private final double[] x;
  private final int p;
  private final double[][] normal;
  private final double[] right;
  private final double[] gradient;
  private final double[][] factor;
  private final double[] step;
  private double[] parameters = new double[0];
  private double squares;

  NormalEquations(FitModel model, double[] x, int parameters) {
    this.model = model;
    this.x = x;
    p = parameters;
    normal = new double[p][p];
    right = new double[p];
    gradient = new double[p];
    factor = new double[p][p];
    step = new double[p];
  }

  double[] parameters() {
    return parameters;
  }

  /** Sum of the squared residuals. */
  double squares() {
    return squares;
  }

  /** Fills them at these parameters. */
  void at(double[] place, double[] y) {
    parameters = place;
    squares = 0;
    Arrays.fill(right, 0);
    for (double[] row : normal) {
      Arrays.fill(row, 0);
    }
    for (int k = 0; k < x.length; k++) {
      double left = y[k] - model.value(x[k], place, gradient);
      squares += left * left;
      for (int i = 0; i < p; i++) {
        right[i] += gradient[i] * left;
        for (int j = 0; j <= i; j++) {
          normal[i][j] += gradient[i] * gradient[j];
        }
      }
    }
  }

  /**
   * Finds the step with that damping.
   *
   * @return whether there is one: the damped matrix may be singular in doubles
   */
  boolean solve(double damping) {
    if (!factored(damping)) {
      return false;
    }
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
    return true;
  }

  /** Cholesky's factor, with each element of the diagonal raised by its own share. */
  private boolean factored(double damping) {
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = normal[i][j];
        if (i == j) {
          sum += damping * Math.max(sum, Double.MIN_NORMAL);
        }
        for (int k = 0; k < j; k++) {
          sum -= factor[i][k] * factor[j][k];
        }
        if (i != j) {
          factor[i][j] = sum / factor[j][j];
        } else if (sum > 0) {
          factor[i][i] = Math.sqrt(sum);
        } else {
          return false;
        }
      }
    }
    return true;
  }

  /** How far the squares would fall by the step if the formula were as straight as its tangent. */
  double promised(double damping) {
    double fall = 0;
    for (int i = 0; i < p; i++) {
      fall += step[i] * (damping * normal[i][i] * step[i] + right[i]);
    }
    return fall;
  }

  /** The parameters after the step. */
  double[] stepped() {
    double[] next = parameters.clone();
    for (int i = 0; i < p; i++) {
      next[i] += step[i];
    }
    return next;
  }
}
