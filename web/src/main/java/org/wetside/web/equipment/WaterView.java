package org.wetside.web.equipment;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.Water;

/**
 * A water of the house over HTTP.
 *
 * @param name as it is called at the sink
 * @param temperatureC what it usually has
 * @param hardness {@code soft}, {@code hard}, {@code distilled} or {@code not said}
 */
public record WaterView(
    @Nullable String name, @Nullable Double temperatureC, @Nullable String hardness) {

  /** The view of a water. */
  public static WaterView of(Water water) {
    return new WaterView(water.name(), water.temperature().celsius(), water.hardness().word());
  }

  /** The water that was sent. */
  public Water water() {
    if (temperatureC == null) {
      throw new BadValueException("temperatureC", "nothing", "say what the water usually has");
    }
    return new Water(
        name == null ? "" : name,
        Temperature.ofCelsius(temperatureC),
        Water.Hardness.fromWord(hardness == null ? "" : hardness));
  }
}
