package org.wetside.core.sensitometry;

/**
 * A band of 90 %.
 *
 * @param low its lower end, in the unit of what it belongs to
 * @param high its upper end, not below the lower
 */
public record Interval(double low, double high) {
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("an interval from " + low + " to " + high);
    }
  }

  /** Whether the value lies in it. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }

  /** Standard deviation of a normal error with this band. */
  public double sd() {
    return (high - low) / 2 / 1.645;
  }
}
