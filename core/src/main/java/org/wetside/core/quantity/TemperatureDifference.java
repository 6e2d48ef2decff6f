package org.wetside.core.quantity;

/**
 * A difference between two temperatures.
 *
 * @param kelvins kelvins, of either sign
 */
public record TemperatureDifference(double kelvins) implements Comparable<TemperatureDifference> {
  public TemperatureDifference {
    kelvins = Finite.require(kelvins, "temperature difference", "K");
  }

  /** From kelvins (the same size as Celsius degrees). */
  public static TemperatureDifference ofKelvins(double kelvins) {
    return new TemperatureDifference(kelvins);
  }

  /** From Fahrenheit degrees as a difference: 9 °F are 5 K. */
  public static TemperatureDifference ofFahrenheitDegrees(double degrees) {
    return new TemperatureDifference(degrees / 1.8);
  }

  /**
   * Reads {@code 0.3K}, {@code -0.2C}, {@code 1F}, and what {@link #toString} prints.
   *
   * @throws BadValueException without a unit or with an unknown one
   */
  public static TemperatureDifference parse(String text) {
    Written written = Written.parse("temperature difference", text, "0.3K");
    switch (written.unit()) {
      case "k", "c", "°c" -> {
        return ofKelvins(written.number());
      }
      case "f", "°f" -> {
        return ofFahrenheitDegrees(written.number());
      }
      default ->
          throw new BadValueException(
              "temperature difference", text, "the unit is K, C or F, for example 0.3K");
    }
  }

  /** The sum. */
  public TemperatureDifference plus(TemperatureDifference other) {
    return new TemperatureDifference(kelvins + other.kelvins);
  }

  /** This less the other. */
  public TemperatureDifference minus(TemperatureDifference other) {
    return new TemperatureDifference(kelvins - other.kelvins);
  }

  /** Scaled by a dimensionless factor. */
  public TemperatureDifference times(double factor) {
    return new TemperatureDifference(kelvins * factor);
  }

  /** Without its sign. */
  public TemperatureDifference abs() {
    return new TemperatureDifference(Math.abs(kelvins));
  }

  @Override
  public int compareTo(TemperatureDifference other) {
    return Double.compare(kelvins, other.kelvins);
  }

  /** For example {@code 0.3 K}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(kelvins) + " K";
  }
}
