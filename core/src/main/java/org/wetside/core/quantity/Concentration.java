package org.wetside.core.quantity;

/**
 * How much of a substance is dissolved in a liquid.
 *
 * @param gramsPerLitre grams in a litre of the liquid, at least 0
 */
public record Concentration(double gramsPerLitre) implements Comparable<Concentration> {
  /** None of it. */
  public static final Concentration NONE = new Concentration(0);

  public Concentration {
    gramsPerLitre = Finite.requireAtLeast(gramsPerLitre, 0, "concentration", "g/L");
  }

  /** From grams per litre. */
  public static Concentration ofGramsPerLitre(double gramsPerLitre) {
    return new Concentration(gramsPerLitre);
  }

  /**
   * Reads {@code 60g/L}, {@code 450 mg/L}, and what {@link #toString} prints.
   *
   * @throws BadValueException without a unit, with an unknown one, or negative
   */
  public static Concentration parse(String text) {
    Written written = Written.parse("concentration", text, "60g/L");
    return switch (written.unit()) {
      case "g/l" -> ofGramsPerLitre(written.number());
      case "mg/l" -> ofGramsPerLitre(written.number() / 1000.0);
      default ->
          throw new BadValueException(
              "concentration", text, "say the unit, g/L or mg/L, for example 60g/L");
    };
  }

  /** Scaled by a dimensionless factor of at least 0. */
  public Concentration times(double factor) {
    return new Concentration(gramsPerLitre * factor);
  }

  @Override
  public int compareTo(Concentration other) {
    return Double.compare(gramsPerLitre, other.gramsPerLitre);
  }

  /** For example {@code 60 g/L}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(gramsPerLitre) + " g/L";
  }
}
