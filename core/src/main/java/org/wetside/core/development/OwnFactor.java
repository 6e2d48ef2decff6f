package org.wetside.core.development;

/**
 * A factor on printed times that its user has learned from judged rolls, and accepted.
 *
 * @param filmCode the film
 * @param developer name of the developer
 * @param lnFactor ln of what a printed time is multiplied by [-]
 * @param lnSd its standard deviation [-]
 * @param rolls how many judged rolls it rests on
 */
public record OwnFactor(
    String filmCode, String developer, double lnFactor, double lnSd, int rolls) {
  /** Where it is from, as the source of its step. */
  public static final String SOURCE = "your judged rolls";

  /** Both figures must be finite, the standard deviation not negative. */
  public OwnFactor {
    if (!Double.isFinite(lnFactor) || !Double.isFinite(lnSd) || lnSd < 0) {
      throw new IllegalArgumentException("factor " + lnFactor + " with sd " + lnSd);
    }
  }
}
