package org.wetside.app.plan;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.WaterAtHand;

/**
 * What there is tonight, as far as it was said.
 *
 * @param kitchen temperature of the room
 * @param tap temperature of the cold tap
 * @param kettle temperature of the hottest water at hand
 * @param limit when the last film has to hang
 */
public record Tonight(
    Optional<Temperature> kitchen,
    Optional<Temperature> tap,
    Optional<Temperature> kettle,
    Optional<LocalTime> limit) {
  private static final double COLDEST_C = -20;
  private static final double WARMEST_C = 100;

  public Tonight {
    kitchen.ifPresent(value -> require("kitchen", value, 50));
    tap.ifPresent(value -> require("tap", value, WARMEST_C));
    kettle.ifPresent(value -> require("kettle", value, WARMEST_C));
  }

  /** Nothing was said. */
  public static Tonight notSaid() {
    return new Tonight(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The waters to mix from, the tap first. */
  public List<WaterAtHand> waters() {
    List<WaterAtHand> waters = new ArrayList<>();
    tap.ifPresent(value -> waters.add(new WaterAtHand("tap", value)));
    kettle.ifPresent(value -> waters.add(new WaterAtHand("kettle", value)));
    return waters;
  }

  private static void require(String thing, Temperature value, double warmest) {
    if (value.celsius() < COLDEST_C || value.celsius() > warmest) {
      throw new BadValueException(
          thing, value.toString(), "between -20 and " + Math.round(warmest) + " °C");
    }
  }
}
