package org.wetside.core.shelf;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * How long a clip of film took to clear in a fixer.
 *
 * @param time until it was clear all over, 1 s to 1 h
 * @param film which film the clip was of; at least one character
 * @param dilution how the fixer was made, for example {@code 1+4}; {@code stock} when undiluted
 * @param temperature of the fixer, 0 to 50 °C
 * @param baseline whether the solution was fresh, so that later times are compared with this one
 */
public record Clearing(
    Duration time, String film, String dilution, Temperature temperature, boolean baseline) {
  private static final Duration LONGEST = Duration.ofHours(1);

  public Clearing {
    film = film.strip();
    dilution = dilution.strip();
    if (time.compareTo(Duration.ofSeconds(1)) < 0 || time.compareTo(LONGEST) > 0) {
      throw new BadValueException("clearing time", time.toMillis() / 1000.0 + " s", "1 s to 1 h");
    }
    if (film.isEmpty()) {
      throw new BadValueException("film of the clip", film, "say which film it was of");
    }
    if (temperature.celsius() < 0 || temperature.celsius() > 50) {
      throw new BadValueException("temperature of the fixer", temperature.toString(), "0 to 50 °C");
    }
  }

  /** The clearing time in seconds. */
  public double seconds() {
    return time.toMillis() / 1000.0;
  }
}
