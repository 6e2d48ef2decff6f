package org.wetside.core.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A band of temperatures, both ends included.
 *
 * @param low the colder end
 * @param high the warmer end, not below {@code low}
 */
public record TemperatureRange(Temperature low, Temperature high) {
  private static final Pattern FROM_TO =
      Pattern.compile("\\s*(.*?[\\d.])\\s*(°?[CcFf])?\\s*(?:to|–|\\.\\.)\\s*(.*)");
  private static final Pattern AROUND = Pattern.compile("\\s*(.*?)\\s*(?:±|\\+/-)\\s*(.*)");

  public TemperatureRange {
    if (low.compareTo(high) > 0) {
      throw new BadValueException(
          "temperature band",
          low + " to " + high,
          "the first temperature must not be above the second");
    }
  }

  /**
   * Reads {@code 18.3 to 23.9 °C}, {@code 65 to 75F}, {@code 20C ± 0.5}, and what {@link #toString}
   * prints; the unit stands behind the first temperature or behind both.
   *
   * @throws BadValueException without a unit, or when it is one temperature and no band
   */
  public static TemperatureRange parse(String text) {
    Matcher fromTo = FROM_TO.matcher(text);
    if (fromTo.matches()) {
      Temperature high = Temperature.parse(fromTo.group(3));
      boolean fahrenheit = fromTo.group(3).strip().toLowerCase(Locale.ROOT).endsWith("f");
      String unit = fromTo.group(2) != null ? fromTo.group(2) : fahrenheit ? "F" : "C";
      return new TemperatureRange(Temperature.parse(fromTo.group(1) + unit), high);
    }
    Matcher around = AROUND.matcher(text);
    if (!around.matches()) {
      throw new BadValueException(
          "temperature band", text, "say from and to, for example 19 to 21 °C, or 20C ± 0.5");
    }
    String first = around.group(1);
    String half = around.group(2);
    boolean unitBehind = first.matches(".*\\d\\s*") && half.matches(".*[CcFf]\\s*");
    String unit = half.strip().toLowerCase(Locale.ROOT).endsWith("f") ? "F" : "C";
    Temperature centre = Temperature.parse(unitBehind ? first + unit : first);
    boolean fahrenheit = unit.equals("F") || first.toLowerCase(Locale.ROOT).contains("f");
    Written tolerance = Written.parse("temperature band", half, "20C ± 0.5");
    return around(
        centre,
        fahrenheit
            ? TemperatureDifference.ofFahrenheitDegrees(tolerance.number())
            : TemperatureDifference.ofKelvins(tolerance.number()));
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

  /** For example {@code 18.3 to 23.9 °C}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(low.celsius()) + " to " + high;
  }
}
