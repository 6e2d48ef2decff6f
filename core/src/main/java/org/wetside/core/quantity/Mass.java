package org.wetside.core.quantity;

/**
 * A mass of something weighed.
 *
 * @param grams grams, at least 0
 */
public record Mass(double grams) implements Comparable<Mass> {
  /**
   * One grain. Source: the international yard and pound agreement of 1959, one avoirdupois pound of
   * 0.45359237 kg in 7000 grains.
   */
  private static final double GRAMS_PER_GRAIN = 453.59237 / 7000;

  private static final double GRAMS_PER_OUNCE = 453.59237 / 16;

  /** Nothing. */
  public static final Mass ZERO = new Mass(0);

  public Mass {
    grams = Finite.requireAtLeast(grams, 0, "mass", "g");
  }

  /** From grams. */
  public static Mass ofGrams(double grams) {
    return new Mass(grams);
  }

  /** From grains, of which 7000 make an avoirdupois pound. */
  public static Mass ofGrains(double grains) {
    return new Mass(grains * GRAMS_PER_GRAIN);
  }

  /**
   * Reads {@code 0.1g}, {@code 1 kg}, {@code 250mg}, {@code 30 grains}, {@code 2oz}, and what
   * {@link #toString} prints.
   *
   * @throws BadValueException without a unit, with an unknown one, or negative
   */
  public static Mass parse(String text) {
    Written written = Written.parse("mass", text, "5g, 0.1g or 250mg");
    switch (written.unit()) {
      case "g", "gram", "grams" -> {
        return ofGrams(written.number());
      }
      case "kg", "kilogram", "kilograms" -> {
        return ofGrams(written.number() * 1000);
      }
      case "mg", "milligram", "milligrams" -> {
        return ofGrams(written.number() / 1000);
      }
      case "grain", "grains", "gr" -> {
        return ofGrains(written.number());
      }
      case "oz", "ounce", "ounces" -> {
        return ofGrams(written.number() * GRAMS_PER_OUNCE);
      }
      case "" -> throw new BadValueException("mass", text, "say the unit, for example 5g or 250mg");
      default ->
          throw new BadValueException(
              "mass", text, "the unit is g, mg, kg, grains or oz (avoirdupois)");
    }
  }

  /** The sum. */
  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
  }

  /** Scaled by a dimensionless factor of at least 0. */
  public Mass times(double factor) {
    return new Mass(grams * factor);
  }

  /** How many times the other this is, dimensionless. */
  public double ratioTo(Mass other) {
    return grams / other.grams;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(grams, other.grams);
  }

  /** For example {@code 140.04 g}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(grams) + " g";
  }
}
