package org.wetside.core.sensitometry;

/** a + b(x − middle) + c(x − middle)². */
final class QuadraticModel implements FitModel {
  private final double middle;

  QuadraticModel(double middle) {
    this.middle = middle;
  }

  @Override
  public double value(double x, double[] parameters, double[] gradient) {
    double from = x - middle;
    gradient[0] = 1;
    gradient[1] = from;
    gradient[2] = from * from;
    return parameters[0] + from * (parameters[1] + from * parameters[2]);
  }
}
