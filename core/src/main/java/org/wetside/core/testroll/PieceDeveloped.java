package org.wetside.core.testroll;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * How a piece was really developed.
 *
 * @param time more than 0, at most 24 h
 * @param temperature of the developer; empty when nobody looked
 * @param day it was done
 */
public record PieceDeveloped(Duration time, Optional<Temperature> temperature, LocalDate day) {
  private static final Duration LONGEST = Duration.ofHours(24);

  /**
   * Checks the time.
   *
   * @throws BadValueException when it is none, or longer than a day
   */
  public PieceDeveloped {
    if (time.isZero() || time.isNegative() || time.compareTo(LONGEST) > 0) {
      throw new BadValueException(
          "development time", time.toSeconds() + " s", "it must be more than 0 and at most 24 h");
    }
  }
}
