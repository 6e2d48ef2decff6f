package org.wetside.core.testroll;

import java.util.stream.IntStream;
import org.wetside.core.quantity.BadValueException;

/**
 * Finds the settings of a series in whole stops from what the meter said. One aperture serves all
 * frames where it can, since a shutter dial is quicker and surer to turn; where it cannot, as few
 * frames as possible take another.
 */
final class StepSettings {
  private static final int THIRDS = 3;

  private final CameraExposure metered;
  private final CameraRange range;
  private final DialMarks shutters;
  private final DialMarks apertures;

  StepSettings(CameraExposure metered, CameraRange range) {
    this.metered = metered;
    this.range = range;
    shutters =
        DialMarks.wholeStopsFrom(
            metered.shutter().thirds(), range.slowest().thirds(), range.fastest().thirds());
    apertures =
        DialMarks.wholeStopsFrom(
            metered.aperture().thirds(), range.widest().thirds(), range.smallest().thirds());
    if (shutters.isEmpty() || apertures.isEmpty()) {
      throw new BadValueException(
          "camera range", range.toString(), "no mark lies whole stops from the metered " + metered);
    }
  }

  /**
   * The aperture from which the series is made.
   *
   * @param least stops from the meter of the least exposure
   * @param most stops from the meter of the greatest exposure
   * @throws BadValueException saying how much more or less light would do
   */
  Aperture aperture(int least, int most) {
    requireRoom(least, most);
    int best = apertures.nearest(metered.aperture().thirds());
    for (int one = apertures.first(); one <= apertures.last(); one += THIRDS) {
      int moved = Integer.compare(moved(one, least, most), moved(best, least, most));
      if (moved < 0 || (moved == 0 && distance(one) < distance(best))) {
        best = one;
      }
    }
    return new Aperture(best);
  }

  /** The frame so many stops from the meter; the aperture is left only where the shutter ends. */
  CameraExposure at(int stops, Aperture aperture) {
    int wanted = wanted(stops);
    int shutter = shutters.nearest(wanted - aperture.thirds());
    return new CameraExposure(new Shutter(shutter), new Aperture(wanted - shutter));
  }

  private int moved(int aperture, int least, int most) {
    return (int)
        IntStream.rangeClosed(least, most)
            .filter(stops -> shutters.nearest(wanted(stops) - aperture) != wanted(stops) - aperture)
            .count();
  }

  private int distance(int aperture) {
    return Math.abs(aperture - metered.aperture().thirds());
  }

  private int wanted(int stops) {
    return metered.thirds() - stops * THIRDS;
  }

  private void requireRoom(int least, int most) {
    int dimmest = shutters.last() + apertures.last();
    int brightest = shutters.first() + apertures.first();
    int span = (dimmest - brightest) / THIRDS;
    if (span < most - least) {
      throw new BadValueException(
          "camera range",
          range.toString(),
          "it spans %d stops, the series needs %d".formatted(span, most - least));
    }
    int tooBright = (wanted(least) - dimmest) / THIRDS;
    int tooDim = (brightest - wanted(most)) / THIRDS;
    if (tooBright > 0) {
      throw refused("-" + -least, extreme(shutters.last(), apertures.last()), tooBright, "less");
    }
    if (tooDim > 0) {
      throw refused("+" + most, extreme(shutters.first(), apertures.first()), tooDim, "more");
    }
  }

  private static CameraExposure extreme(int shutter, int aperture) {
    return new CameraExposure(new Shutter(shutter), new Aperture(aperture));
  }

  private BadValueException refused(String step, CameraExposure end, int stops, String way) {
    return new BadValueException(
        "metered exposure",
        metered.toString(),
        "the frame at %s stops would lie beyond %s, where this camera ends; %d %s %s light is needed"
            .formatted(step, end, stops, stops == 1 ? "stop" : "stops", way));
  }
}
