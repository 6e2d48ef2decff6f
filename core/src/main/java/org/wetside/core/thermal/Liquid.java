package org.wetside.core.thermal;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * A measured amount of liquid at a temperature: concentrate or stock that is counted into a mix, or
 * a part to pour. Reckoned as water (equal density and specific heat; below 2 % wrong for
 * concentrates).
 *
 * @param name what it is called at the sink, for example {@code hot} or {@code stock}
 * @param volume how much, as measured at its own temperature
 * @param temperature its temperature, 0 to 100 °C
 */
public record Liquid(String name, Volume volume, Temperature temperature) {
  /**
   * Reads {@code 300mL@18C}: a volume, the sign, its temperature.
   *
   * @throws BadValueException when it is not of that form, or a part of it is not
   */
  public static Liquid parse(String name, String text) {
    String[] parts = text.split("@", -1);
    if (parts.length != 2) {
      throw new BadValueException(
          name + " counted in", text, "write volume and temperature, for example 300mL@18C");
    }
    return new Liquid(name, Volume.parse(parts[0]), Temperature.parse(parts[1]));
  }

  double grams() {
    return WaterDensity.grams(volume.millilitres(), temperature);
  }
}
