package org.wetside.app.mixing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.WaterAtHand;

/**
 * What there is to temper the baths of a load with.
 *
 * @param waters at hand, in order of preference; empty takes those said tonight, then those of the
 *     house
 * @param room surroundings; empty takes the kitchen as said tonight
 * @param timeConstant of a bath of that size in the room, as measured; empty when nobody has
 */
public record TemperWish(
    List<WaterAtHand> waters, Optional<Temperature> room, Optional<Duration> timeConstant) {
  public TemperWish {
    waters = List.copyOf(waters);
  }

  /** Nothing is said: all from what is kept. */
  public static TemperWish asKept() {
    return new TemperWish(List.of(), Optional.empty(), Optional.empty());
  }
}
