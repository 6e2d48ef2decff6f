package org.wetside.core.thermal;

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
  double grams() {
    return WaterDensity.grams(volume.millilitres(), temperature);
  }
}
