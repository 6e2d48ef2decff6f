package org.wetside.core.quantity;

/**
 * A band of temperatures, both ends included.
 *
 * @param low the colder end
 * @param high the warmer end, not below {@code low}
 */
public record TemperatureRange(Temperature low, Temperature high) {
  public TemperatureRange {
    if (low.compareTo(high) > 0) {
      throw new BadValueException(
          "temperature band",
          low + " to " + high,
          "the first temperature must not be above the second");
    }
  }

  /** Centre ± tolerance. */
  public static TemperatureRange around(Temperature centre, TemperatureDifference tolerance) {
    TemperatureDifference half = tolerance.abs();
    return new TemperatureRange(centre.plus(half.times(-1)), centre.plus(half));
  }

  /** Whether the temperature lies in the band. */
  public boolean contains(Temperature temperature) {
    return low.compareTo(temperature) <= 0 && temperature.compareTo(high) <= 0;
  }

  /** How far outside the band, signed; zero inside. */
  public TemperatureDifference outsideBy(Temperature temperature) {
    if (temperature.compareTo(low) < 0) {
      return temperature.minus(low);
    }
    return temperature.compareTo(high) > 0
        ? temperature.minus(high)
        : TemperatureDifference.ofKelvins(0);
  }
}
