package org.wetside.core.quantity;

/**
 * A volume of liquid.
 *
 * @param millilitres millilitres, at least 0
 */
public record Volume(double millilitres) implements Comparable<Volume> {
  /**
   * One US fluid ounce. Source: 15 CFR / NIST Handbook 44 definition of the US gallon, 231 cubic
   * inches of 2.54³ cm³, in 128 parts.
   */
  private static final double ML_PER_US_FLUID_OUNCE = 231.0 * 2.54 * 2.54 * 2.54 / 128.0;

  /** Nothing. */
  public static final Volume ZERO = new Volume(0);

  public Volume {
    millilitres = Finite.requireAtLeast(millilitres, 0, "volume", "mL");
  }

  /** From millilitres. */
  public static Volume ofMillilitres(double millilitres) {
    return new Volume(millilitres);
  }

  /** From litres. */
  public static Volume ofLitres(double litres) {
    return new Volume(litres * 1000.0);
  }

  /** From US fluid ounces. */
  public static Volume ofUsFluidOunces(double ounces) {
    return new Volume(ounces * ML_PER_US_FLUID_OUNCE);
  }

  /**
   * Reads {@code 256mL}, {@code 1L}, {@code 8 fl oz}, and what {@link #toString} prints.
   *
   * @throws BadValueException without a unit, with an unknown one, or negative
   */
  public static Volume parse(String text) {
    Written written = Written.parse("volume", text, "600mL, 1L or 20floz");
    switch (written.unit()) {
      case "ml", "millilitre", "millilitres" -> {
        return ofMillilitres(written.number());
      }
      case "l", "litre", "litres" -> {
        return ofLitres(written.number());
      }
      case "floz", "fl oz", "us fl oz" -> {
        return ofUsFluidOunces(written.number());
      }
      case "" ->
          throw new BadValueException(
              "volume", text, "say the unit, for example 600mL, 1L or 20floz");
      default ->
          throw new BadValueException(
              "volume", text, "the unit is mL, L or floz (US fluid ounces)");
    }
  }

  /** The same volume in US fluid ounces. */
  public double usFluidOunces() {
    return millilitres / ML_PER_US_FLUID_OUNCE;
  }

  /** The sum. */
  public Volume plus(Volume other) {
    return new Volume(millilitres + other.millilitres);
  }

  /**
   * What is left after taking the other away.
   *
   * @throws BadValueException when more is taken than there is
   */
  public Volume minus(Volume other) {
    if (other.millilitres > millilitres) {
      throw new BadValueException("volume to take", other.toString(), "there are only " + this);
    }
    return new Volume(millilitres - other.millilitres);
  }

  /** Scaled by a dimensionless factor of at least 0. */
  public Volume times(double factor) {
    return new Volume(millilitres * factor);
  }

  /** How many times the other this is, dimensionless. */
  public double ratioTo(Volume other) {
    return millilitres / other.millilitres;
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(millilitres, other.millilitres);
  }

  /** For example {@code 256 mL}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(millilitres) + " mL";
  }
}
