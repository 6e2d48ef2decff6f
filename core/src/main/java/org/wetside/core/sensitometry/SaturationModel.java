package org.wetside.core.sensitometry;

/** {@link Saturation} with unknown limit, rate and, when asked for, delay. */
final class SaturationModel implements FitModel {
  @Override
  public double value(double x, double[] parameters, double[] gradient) {
    double limit = parameters[0];
    double rate = parameters[1];
    double delay = parameters.length > 2 ? parameters[2] : 0;
    double left = Math.exp(-rate * (x - delay));
    double reached = -Math.expm1(-rate * (x - delay));
    gradient[0] = reached;
    gradient[1] = limit * left * (x - delay);
    if (parameters.length > 2) {
      gradient[2] = -limit * rate * left;
    }
    return limit * reached;
  }
}
