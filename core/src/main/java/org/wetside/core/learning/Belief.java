package org.wetside.core.learning;

/**
 * What is held to be true, as a normal distribution.
 *
 * @param mean its middle
 * @param sd its standard deviation
 * @param rolls how many rolls of the film and developer it rests on; with 0 it rests on the user's
 *     other films and on what is printed
 */
public record Belief(double mean, double sd, int rolls) {
  /** Standard deviations on either side of the middle that hold 90 %. */
  public static final double NINETY_PERCENT = 1.645;

  /** Half the width of the band of nine in ten. */
  public double halfBand() {
    return NINETY_PERCENT * sd;
  }

  /** Whether a value lies in the band of nine in ten. */
  public boolean holds(double value) {
    return Math.abs(value - mean) <= halfBand();
  }
}
