package org.wetside.core.sensitometry;

/** A formula with unknown parameters that {@link LeastSquares} finds. */
public interface FitModel {
  /**
   * The formula at one place.
   *
   * @param x the place
   * @param parameters the parameters
   * @param gradient filled with the derivative by each parameter
   * @return the value
   */
  double value(double x, double[] parameters, double[] gradient);
}
