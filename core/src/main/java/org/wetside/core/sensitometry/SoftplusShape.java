package org.wetside.core.sensitometry;

/**
 * A characteristic curve as a formula: D = b + γ[s·sp((x − x0)/s) − s1·sp((x − x1)/s1)] with sp(u)
 * = ln(1 + e^u): base, a rounded toe, a straight part, a rounded shoulder (model, section 3; the
 * toe of this form is read in SE-S35).
 *
 * @param base b, density far below the toe [-]
 * @param slope γ of the straight part [-]
 * @param toe x0, where the straight part meets the base, log10 lx·s
 * @param toeWidth s, log10, above 0
 * @param shoulder x1, where the straight part would meet the end, log10 lx·s; +∞ without shoulder
 * @param shoulderWidth s1, log10, above 0
 */
public record SoftplusShape(
    double base, double slope, double toe, double toeWidth, double shoulder, double shoulderWidth) {
  /** The curve that goes on rising. */
  public static SoftplusShape withoutShoulder(
      double base, double slope, double toe, double toeWidth) {
    return new SoftplusShape(base, slope, toe, toeWidth, Double.POSITIVE_INFINITY, 1);
  }

  /** Density at log10 exposure [-]. */
  public double densityAt(double log10LuxSeconds) {
    double rise = toeWidth * softplus((log10LuxSeconds - toe) / toeWidth);
    double fall =
        Double.isInfinite(shoulder)
            ? 0
            : shoulderWidth * softplus((log10LuxSeconds - shoulder) / shoulderWidth);
    return base + slope * (rise - fall);
  }

  /** ln(1 + e^u) without overflow. */
  static double softplus(double u) {
    return u > 0 ? u + Math.log1p(Math.exp(-u)) : Math.log1p(Math.exp(u));
  }

  /** Its derivative, 1/(1 + e^−u). */
  static double logistic(double u) {
    return 1 / (1 + Math.exp(-u));
  }
}
