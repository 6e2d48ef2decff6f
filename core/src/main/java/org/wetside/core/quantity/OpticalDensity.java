package org.wetside.core.quantity;

/**
 * How dark a place on a negative or tablet is: diffuse visual transmission density, log10 of
 * incident over transmitted light. Not the density of a liquid.
 *
 * @param value dimensionless, −0.1 to 6; a little below 0 because a net reading of clear film
 *     scatters around it
 */
public record OpticalDensity(double value) implements Comparable<OpticalDensity> {
  private static final double LEAST = -0.1;
  private static final double MOST = 6;

  public OpticalDensity {
    value = Finite.require(value, "density", "(dimensionless)");
    if (value < LEAST || value > MOST) {
      throw new BadValueException("density", Finite.plain(value), "it must be between −0.1 and 6");
    }
  }

  /** From the dimensionless value, for example 0.35. */
  public static OpticalDensity of(double value) {
    return new OpticalDensity(value);
  }

  /**
   * From the share of light that passes.
   *
   * @param transmittance above 0, at most 1
   */
  public static OpticalDensity fromTransmittance(double transmittance) {
    return new OpticalDensity(
        -Math.log10(Finite.requireAbove(transmittance, 0, "transmittance", "(dimensionless)")));
  }

  @Override
  public int compareTo(OpticalDensity other) {
    return Double.compare(value, other.value);
  }
}
