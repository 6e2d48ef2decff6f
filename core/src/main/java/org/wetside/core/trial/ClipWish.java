package org.wetside.core.trial;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * What is said of a clip before it goes into the fixer.
 *
 * @param film which film it is of, 1 to 60 characters
 * @param dilution how the fixer was made, 1 to 40 characters, for example {@code 1+4}
 * @param temperature of the fixer, 0 to 50 °C
 * @param fresh whether the solution is fresh, so that the time becomes the baseline
 */
public record ClipWish(String film, String dilution, Temperature temperature, boolean fresh) {
  private static final double COLDEST_C = 0;
  private static final double WARMEST_C = 50;

  public ClipWish {
    film = film.strip();
    dilution = dilution.strip();
    if (film.isEmpty() || film.length() > 60) {
      throw new BadValueException("film of the clip", film, "say which film, 1 to 60 characters");
    }
    if (dilution.isEmpty() || dilution.length() > 40) {
      throw new BadValueException(
          "dilution of the fixer", dilution, "say how it was made, for example 1+4 or stock");
    }
    if (temperature.celsius() < COLDEST_C || temperature.celsius() > WARMEST_C) {
      throw new BadValueException("temperature of the fixer", temperature.toString(), "0 to 50 °C");
    }
  }
}
