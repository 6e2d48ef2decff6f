package org.wetside.core.thermal;

import org.wetside.core.quantity.Temperature;

/**
 * Water there is enough of, at one temperature.
 *
 * @param name {@code cold}, {@code hot}, {@code ice-box} or as the user calls it
 * @param temperature its temperature, 0 to 100 °C
 */
public record WaterAtHand(String name, Temperature temperature) {}
