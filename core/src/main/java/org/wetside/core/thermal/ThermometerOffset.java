package org.wetside.core.thermal;

import java.time.LocalDate;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

/**
 * What has to be added to a thermometer's readings, as found once against a reference.
 *
 * @param correction added to a reading; a thermometer that shows 0.4 K too much has -0.4 K
 * @param at the true temperature it was found at: 0 °C for melting ice
 * @param doubt half width of the band that the comparison itself left, at least 0
 * @param found the day it was found
 * @param how in the user's words, for example {@code ice point}
 */
public record ThermometerOffset(
    TemperatureDifference correction,
    Temperature at,
    TemperatureDifference doubt,
    LocalDate found,
    String how) {
  /** A correction beyond this means another thermometer, not a correction. */
  private static final double LARGEST_KELVINS = 10;

  public ThermometerOffset {
    if (Math.abs(correction.kelvins()) > LARGEST_KELVINS) {
      throw new BadValueException(
          "thermometer offset", correction.toString(), "it must be within ±10 K");
    }
    if (doubt.kelvins() < 0) {
      throw new BadValueException("doubt of the offset", doubt.toString(), "it must be at least 0");
    }
  }

  /** From what the thermometer showed while the truth was {@code at}. */
  public static ThermometerOffset fromComparison(
      Temperature shown, Temperature at, TemperatureDifference doubt, LocalDate found, String how) {
    return new ThermometerOffset(at.minus(shown), at, doubt, found, how);
  }
}
