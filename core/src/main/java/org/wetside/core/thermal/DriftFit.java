package org.wetside.core.thermal;

import java.util.List;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

/** What readings say of a bath's drift: {@link Found} or {@link NotDeterminable}. */
public sealed interface DriftFit permits DriftFit.Found, DriftFit.NotDeterminable {
  /**
   * A drift that goes through the readings.
   *
   * @param drift time constant and surroundings
   * @param start the temperature at elapsed zero
   * @param residual root mean square of what the drift leaves of the readings; zero when there are
   *     no more readings than unknowns
   * @param roomFitted whether the surroundings were found from the readings
   */
  record Found(Drift drift, Temperature start, TemperatureDifference residual, boolean roomFitted)
      implements DriftFit {}

  /**
   * The readings do not determine a drift.
   *
   * @param reason why, in words
   */
  record NotDeterminable(String reason) implements DriftFit {}

  /** From readings with known surroundings: two determine τ, more are fitted by least squares. */
  static DriftFit withRoom(List<TimedReading> readings, Temperature room) {
    return new DriftFitter(readings).withRoom(room);
  }

  /** From three readings or more: τ and the surroundings by least squares. */
  static DriftFit findingRoom(List<TimedReading> readings) {
    return new DriftFitter(readings).findingRoom();
  }
}
