package org.wetside.core.quantity;

/**
 * The steepness of a characteristic curve (contrast index, average gradient or gamma; the context
 * says which), dimensionless.
 *
 * @param value density per log10 exposure, at least 0
 */
public record Gradient(double value) implements Comparable<Gradient> {
  public Gradient {
    value = Finite.requireAtLeast(value, 0, "contrast", "(dimensionless)");
  }

  /** From the dimensionless value, for example 0.58. */
  public static Gradient of(double value) {
    return new Gradient(value);
  }

  @Override
  public int compareTo(Gradient other) {
    return Double.compare(value, other.value);
  }
}
