package org.wetside.core.quantity;

/**
 * A difference in exposure counted in stops; one stop is a factor of two.
 *
 * @param count stops, positive for more push (a higher exposure index)
 */
public record Stops(double count) implements Comparable<Stops> {
  public Stops {
    count = Finite.require(count, "stops", "stops");
  }

  /** From a count of stops. */
  public static Stops of(double count) {
    return new Stops(count);
  }

  /** From thirds of a stop, as cameras count. */
  public static Stops ofThirds(int thirds) {
    return new Stops(thirds / 3.0);
  }

  /** The sum. */
  public Stops plus(Stops other) {
    return new Stops(count + other.count);
  }

  /** With the other sign. */
  public Stops negate() {
    return new Stops(-count);
  }

  /** Without its sign. */
  public Stops abs() {
    return new Stops(Math.abs(count));
  }

  @Override
  public int compareTo(Stops other) {
    return Double.compare(count, other.count);
  }
}
