package org.wetside.core.sensitometry;

/**
 * {@link SoftplusShape} with unknown b, γ, x0, ln s and, with a shoulder, x1 and ln s1. Widths
 * enter as logarithms, so that they stay above 0.
 */
final class SoftplusModel implements FitModel {
  static final int WITHOUT_SHOULDER = 4;
  static final int WITH_SHOULDER = 6;

  @Override
  public double value(double x, double[] parameters, double[] gradient) {
    double slope = parameters[1];
    double s = Math.exp(parameters[3]);
    double u = (x - parameters[2]) / s;
    double toeAt = SoftplusShape.softplus(u);
    double toeRise = SoftplusShape.logistic(u);
    double form = s * toeAt;
    gradient[0] = 1;
    gradient[2] = -slope * toeRise;
    gradient[3] = slope * s * (toeAt - u * toeRise);
    if (parameters.length == WITH_SHOULDER) {
      double s1 = Math.exp(parameters[5]);
      double u1 = (x - parameters[4]) / s1;
      double shoulderAt = SoftplusShape.softplus(u1);
      double shoulderRise = SoftplusShape.logistic(u1);
      form -= s1 * shoulderAt;
      gradient[4] = slope * shoulderRise;
      gradient[5] = -slope * s1 * (shoulderAt - u1 * shoulderRise);
    }
    gradient[1] = form;
    return parameters[0] + slope * form;
  }

  static SoftplusShape shape(double[] parameters) {
    return parameters.length == WITH_SHOULDER
        ? new SoftplusShape(
            parameters[0],
            parameters[1],
            parameters[2],
            Math.exp(parameters[3]),
            parameters[4],
            Math.exp(parameters[5]))
        : SoftplusShape.withoutShoulder(
            parameters[0], parameters[1], parameters[2], Math.exp(parameters[3]));
  }
}
