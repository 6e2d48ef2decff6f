package org.wetside.core.learning;

/**
 * How far things differ from one another before anything was seen, as standard deviations in the
 * unit of what is learned: ln(time) for a factor, stops for an exposure index.
 *
 * @param common of one user's films together from what is printed
 * @param pair of one film in one developer from what that user's films have in common
 * @param roll of one roll from the others of its film and developer
 */
public record Scatter(double common, double pair, double roll) {
  /** All must be above 0: a certainty cannot be learned about. */
  public Scatter {
    if (!(common > 0 && pair > 0 && roll > 0)) {
      throw new IllegalArgumentException(
          "scatter must be above 0: " + common + ", " + pair + ", " + roll);
    }
  }
}
