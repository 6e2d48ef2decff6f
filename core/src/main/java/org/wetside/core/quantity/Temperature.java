package org.wetside.core.quantity;

/**
 * A temperature, the point on the scale. Differences are {@link TemperatureDifference}; two points
 * cannot be added.
 *
 * @param celsius degrees Celsius, at least -273.15
 */
public record Temperature(double celsius) implements Comparable<Temperature> {
  private static final double ABSOLUTE_ZERO_C = -273.15;

  public Temperature {
    celsius = Finite.requireAtLeast(celsius, ABSOLUTE_ZERO_C, "temperature", "°C");
  }

  /** From degrees Celsius. */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius);
  }

  /** From degrees Fahrenheit. */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return new Temperature((fahrenheit - 32.0) / 1.8);
  }

  /**
   * Reads {@code 20C}, {@code 20 °C}, {@code 68F}, {@code 68 °F}, and what {@link #toString}
   * prints.
   *
   * @throws BadValueException without a unit, with an unknown one, or below absolute zero
   */
  public static Temperature parse(String text) {
    Written written = Written.parse("temperature", text, "20C or 68F");
    switch (written.unit()) {
      case "c", "°c" -> {
        return ofCelsius(written.number());
      }
      case "f", "°f" -> {
        return ofFahrenheit(written.number());
      }
      case "" ->
          throw new BadValueException("temperature", text, "say the unit, for example 20C or 68F");
      default ->
          throw new BadValueException(
              "temperature", text, "the unit is C or F, for example 20C or 68F");
    }
  }

  /** The same point in degrees Fahrenheit. */
  public double fahrenheit() {
    return celsius * 1.8 + 32.0;
  }

  /** The difference from another point, positive when this one is warmer. */
  public TemperatureDifference minus(Temperature other) {
    return TemperatureDifference.ofKelvins(celsius - other.celsius);
  }

  /** This point moved by a difference. */
  public Temperature plus(TemperatureDifference difference) {
    return new Temperature(celsius + difference.kelvins());
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }

  /** For example {@code 20 °C}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(celsius) + " °C";
  }
}
