package org.wetside.core.quantity;

/**
 * Mass on an area of film, one side.
 *
 * @param gramsPerSquareMetre grams on a square metre, at least 0
 */
public record ArealMass(double gramsPerSquareMetre) implements Comparable<ArealMass> {
  private static final double CM2_PER_SQUARE_METRE = 1e4;
  private static final double CM2_PER_SQUARE_INCH = 2.54 * 2.54;

  public ArealMass {
    gramsPerSquareMetre =
        Finite.requireAtLeast(gramsPerSquareMetre, 0, "mass on an area of film", "g/m²");
  }

  /** From grams per square metre. */
  public static ArealMass ofGramsPerSquareMetre(double gramsPerSquareMetre) {
    return new ArealMass(gramsPerSquareMetre);
  }

  /** From milligrams per square inch, as older reports print it. */
  public static ArealMass ofMilligramsPerSquareInch(double milligrams) {
    return new ArealMass(milligrams / 1000.0 / CM2_PER_SQUARE_INCH * CM2_PER_SQUARE_METRE);
  }

  /** The same in micrograms per square centimetre. */
  public double microgramsPerSquareCentimetre() {
    return gramsPerSquareMetre * 1e6 / CM2_PER_SQUARE_METRE;
  }

  /** The same in milligrams per square inch. */
  public double milligramsPerSquareInch() {
    return gramsPerSquareMetre * 1000.0 / CM2_PER_SQUARE_METRE * CM2_PER_SQUARE_INCH;
  }

  /** The mass on an area, in grams; one side, in square centimetres. */
  public double gramsOn(double squareCentimetres) {
    return gramsPerSquareMetre * squareCentimetres / CM2_PER_SQUARE_METRE;
  }

  /** How many times the other this is, dimensionless. */
  public double ratioTo(ArealMass other) {
    return gramsPerSquareMetre / other.gramsPerSquareMetre;
  }

  @Override
  public int compareTo(ArealMass other) {
    return Double.compare(gramsPerSquareMetre, other.gramsPerSquareMetre);
  }

  /** For example {@code 0.014 g/m²}. */
  @Override
  public String toString() {
    return Finite.plain(gramsPerSquareMetre) + " g/m²";
  }
}
