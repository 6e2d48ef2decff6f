package org.wetside.core.thermal;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * The vessel the mix is made in, as far as it takes up heat.
 *
 * @param heatCapacityJoulesPerKelvin at least 0
 * @param temperature its own temperature before the first pour
 */
public record Vessel(double heatCapacityJoulesPerKelvin, Temperature temperature) {
  /**
   * Specific heat of water near 20 °C in joules per gram and kelvin; from memory, used only to turn
   * a vessel's heat capacity into grams of water.
   */
  private static final double WATER_JOULES_PER_GRAM_KELVIN = 4.18;

  private static final Pattern FORM = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*J/K\\s*@(.*)");

  public Vessel {
    if (!(heatCapacityJoulesPerKelvin >= 0) || Double.isInfinite(heatCapacityJoulesPerKelvin)) {
      throw new BadValueException(
          "heat capacity of the vessel",
          heatCapacityJoulesPerKelvin + " J/K",
          "it must be at least 0 J/K");
    }
  }

  /**
   * Reads {@code 150J/K@15C}: heat capacity, the sign, the vessel's temperature.
   *
   * @throws BadValueException when it is not of that form
   */
  public static Vessel parse(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new BadValueException(
          "vessel", text, "write heat capacity and temperature, for example 150J/K@15C");
    }
    return new Vessel(Double.parseDouble(matcher.group(1)), Temperature.parse(matcher.group(2)));
  }

  /** The mass of water that would take up as much heat, in grams. */
  double gramsOfWater() {
    return heatCapacityJoulesPerKelvin / WATER_JOULES_PER_GRAM_KELVIN;
  }
}
