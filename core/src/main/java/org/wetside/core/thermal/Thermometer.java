package org.wetside.core.thermal;

import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

/**
 * A thermometer and what is known of its error.
 *
 * @param name unique name, for example {@code glass rod}
 * @param offset the correction last found, if any
 */
public record Thermometer(String name, Optional<ThermometerOffset> offset) {
  /** Half width for a thermometer nobody has compared; editable default, from memory. */
  public static final TemperatureDifference UNCHECKED = TemperatureDifference.ofKelvins(0.5);

  /** What is added to the doubt away from the point of comparison; from memory. */
  public static final TemperatureDifference AWAY_FROM_REFERENCE =
      TemperatureDifference.ofKelvins(0.3);

  /** Farther than this from the point of comparison is "away". */
  private static final double NEAR_KELVINS = 2;

  /** A thermometer that has not been compared with anything. */
  public static Thermometer unchecked(String name) {
    return new Thermometer(name, Optional.empty());
  }

  /** Corrects what it shows and says how far that may be off. */
  public Reading read(Temperature raw) {
    if (offset.isEmpty()) {
      return new Reading(raw, raw, UNCHECKED);
    }
    ThermometerOffset known = offset.get();
    Temperature corrected = raw.plus(known.correction());
    boolean near = corrected.minus(known.at()).abs().kelvins() <= NEAR_KELVINS;
    return new Reading(
        raw, corrected, near ? known.doubt() : known.doubt().plus(AWAY_FROM_REFERENCE));
  }
}
