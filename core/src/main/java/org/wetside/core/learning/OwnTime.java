package org.wetside.core.learning;

/**
 * A user's own factor on the maker's time of a film in a developer.
 *
 * @param belief what is believed of ln of the factor
 */
public record OwnTime(Belief belief) {
  /** What the maker's time is to be multiplied by [-]. */
  public double factor() {
    return Math.exp(belief.mean());
  }

  /** The low end of nine in ten [-]. */
  public double low() {
    return Math.exp(belief.mean() - belief.halfBand());
  }

  /** The high end of nine in ten [-]. */
  public double high() {
    return Math.exp(belief.mean() + belief.halfBand());
  }
}
