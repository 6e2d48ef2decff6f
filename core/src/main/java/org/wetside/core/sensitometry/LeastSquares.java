package org.wetside.core.sensitometry;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Levenberg–Marquardt of the numerics library with the model's own derivatives, then a polish by
 * Gauss–Newton steps.
 */
public final class LeastSquares {
  private static final double TIGHT = 1e-15;
  private static final int MOST_STEPS = 5000;
  private static final int POLISHING = 20;

  /** Columns of the scaled Jacobian nearer than this to dependent ones say nothing. */
  private static final double SINGULAR = 1e-9;

  private final FitModel model;
  private final double[] x;
  private final double[] y;

  /**
   * Of a model to readings.
   *
   * @param x places
   * @param y readings, as many
   */
  public LeastSquares(FitModel model, double[] x, double[] y) {
    this.model = model;
    this.x = x.clone();
    this.y = y.clone();
  }

  /**
   * The least squares from a start.
   *
   * @param tolerance relative change of cost and parameters at which to stop
   * @param most evaluations of the model before it counts as not converged
   */
  LeastSquaresFit from(double[] start, double tolerance, int most) {
    try {
      RealVector found =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(tolerance)
              .withParameterRelativeTolerance(tolerance)
              .withOrthoTolerance(tolerance)
              .optimize(
                  new LeastSquaresBuilder()
                      .model(this::evaluate)
                      .target(y)
                      .start(start)
                      .maxEvaluations(most)
                      .maxIterations(most)
                      .lazyEvaluation(false)
                      .build())
              .getPoint();
      double[] parameters = found.toArray();
      return new LeastSquaresFit(parameters, squares(parameters), finite(parameters));
    } catch (MathRuntimeException notConverged) {
      return new LeastSquaresFit(start, squares(start), false);
    }
  }

  /**
   * The least squares as tightly as doubles allow: from a start, then polished by Gauss–Newton
   * steps. Certified problems (NIST StRD) come out to eight digits.
   */
  public LeastSquaresFit polishedFrom(double[] start) {
    LeastSquaresFit fit = from(start, TIGHT, MOST_STEPS);
    return fit.converged() ? polished(fit) : fit;
  }

  private LeastSquaresFit polished(LeastSquaresFit fit) {
    double[] best = fit.parameters();
    double least = fit.squares();
    for (int step = 0; step < POLISHING; step++) {
      double[] next;
      try {
        next = gaussNewton(best);
      } catch (MathRuntimeException singular) {
        break;
      }
      double squares = squares(next);
      if (!(squares <= least * (1 + TIGHT))) {
        break;
      }
      boolean still = java.util.Arrays.equals(best, next);
      best = next;
      least = squares;
      if (still) {
        break;
      }
    }
    return new LeastSquaresFit(best, least, true);
  }

  private double[] gaussNewton(double[] parameters) {
    double[][] jacobian = new double[x.length][parameters.length];
    double[] left = residuals(parameters, jacobian);
    double[] norms = scale(jacobian);
    RealVector step =
        new QRDecomposition(new Array2DRowRealMatrix(jacobian, false))
            .getSolver()
            .solve(new ArrayRealVector(left, false));
    double[] next = parameters.clone();
    for (int i = 0; i < next.length; i++) {
      next[i] += step.getEntry(i) / norms[i];
    }
    return next;
  }

  /**
   * Standard errors of the parameters: √(diag((JᵀJ)⁻¹)·RSS/(n−p)).
   *
   * @return empty array when the covariance is singular or nothing is left over
   */
  public double[] standardErrors(LeastSquaresFit fit) {
    int p = fit.parameters().length;
    if (x.length <= p) {
      return new double[0];
    }
    double[][] jacobian = new double[x.length][p];
    residuals(fit.parameters(), jacobian);
    double[] norms = scale(jacobian);
    RealMatrix r =
        new QRDecomposition(new Array2DRowRealMatrix(jacobian, false))
            .getR()
            .getSubMatrix(0, p - 1, 0, p - 1);
    for (int i = 0; i < p; i++) {
      if (!(Math.abs(r.getEntry(i, i)) > SINGULAR)) {
        return new double[0];
      }
    }
    RealMatrix inverse = MatrixUtils.inverse(r);
    double variance = fit.squares() / (x.length - p);
    double[] errors = new double[p];
    for (int i = 0; i < p; i++) {
      errors[i] = inverse.getRowVector(i).getNorm() * Math.sqrt(variance) / norms[i];
    }
    return errors;
  }

  /** Brings every column to length 1 and returns what the lengths were. */
  private static double[] scale(double[][] jacobian) {
    int p = jacobian[0].length;
    double[] norms = new double[p];
    for (int j = 0; j < p; j++) {
      double sum = 0;
      for (double[] row : jacobian) {
        sum += row[j] * row[j];
      }
      norms[j] = sum > 0 ? Math.sqrt(sum) : 1;
      for (double[] row : jacobian) {
        row[j] /= norms[j];
      }
    }
    return norms;
  }

  private double[] residuals(double[] parameters, double[][] jacobian) {
    double[] left = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      left[i] = y[i] - model.value(x[i], parameters, jacobian[i]);
    }
    return left;
  }

  private double squares(double[] parameters) {
    double[] gradient = new double[parameters.length];
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      double left = y[i] - model.value(x[i], parameters, gradient);
      sum += left * left;
    }
    return sum;
  }

  private Pair<RealVector, RealMatrix> evaluate(RealVector point) {
    double[] parameters = point.toArray();
    double[] values = new double[x.length];
    double[][] jacobian = new double[x.length][parameters.length];
    for (int i = 0; i < x.length; i++) {
      values[i] = model.value(x[i], parameters, jacobian[i]);
    }
    return new Pair<>(
        new ArrayRealVector(values, false), new Array2DRowRealMatrix(jacobian, false));
  }

  private static boolean finite(double[] parameters) {
    for (double parameter : parameters) {
      if (!Double.isFinite(parameter)) {
        return false;
      }
    }
    return true;
  }
}
