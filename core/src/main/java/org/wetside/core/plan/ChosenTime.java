package org.wetside.core.plan;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.development.Band;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;

/**
 * The development time a load is run at, and how it came to be known.
 *
 * @param time more than 0, at most 24 h
 * @param standing of the weakest step
 * @param source where it is from, in words a person recognises
 * @param band nine in ten; empty when nobody knows, as for a time typed from a leaflet
 */
public record ChosenTime(Duration time, Standing standing, String source, Optional<Band> band) {
  private static final Duration LONGEST = Duration.ofHours(24);

  public ChosenTime {
    if (time.isNegative() || time.isZero() || time.compareTo(LONGEST) > 0) {
      throw new BadValueException(
          "development time", time.toSeconds() + " s", "more than 0 and at most 24 h");
    }
  }
}
