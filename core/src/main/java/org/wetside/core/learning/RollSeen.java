package org.wetside.core.learning;

import java.time.Instant;

/**
 * What one roll says of its film and developer.
 *
 * @param roll its number
 * @param of film and developer
 * @param at when it was developed
 * @param value what it says: ln of the factor, or stops
 * @param sd how surely, without the roll's own deviation; above 0, same unit
 */
public record RollSeen(String roll, FilmInDeveloper of, Instant at, double value, double sd) {
  /** Values must be finite and the standard deviation above 0. */
  public RollSeen {
    if (!Double.isFinite(value) || !(sd > 0) || !Double.isFinite(sd)) {
      throw new IllegalArgumentException("roll " + roll + " says " + value + " with sd " + sd);
    }
  }

  /** The same by so much more. */
  RollSeen shifted(double by) {
    return new RollSeen(roll, of, at, value + by, sd);
  }

  /** Variance about the value of its film and developer: the reading's, and the roll's own. */
  double variance(Scatter scatter) {
    return sd * sd + scatter.roll() * scatter.roll();
  }
}
