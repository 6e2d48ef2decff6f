package org.wetside.core.strip;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.sensitometry.CurveReadings;
import org.wetside.core.sensitometry.StepReading;

/**
 * A piece of film exposed in steps, developed once and read.
 *
 * @param film name as it was typed, 1 to 80 characters
 * @param developer likewise
 * @param dilution of the developer
 * @param time development time, above 0, at most 24 h
 * @param temperature of the developer; empty when nobody said
 * @param vessel that it was developed in
 * @param developedOn the day; empty when nobody said
 * @param light that made the steps
 * @param scale that the places are counted in; stops belong to {@link StepLight#CAMERA} and to
 *     nothing else
 * @param readings in the order they were typed; a step read more than once stands there more often
 * @param baseFog as it was read; empty to find it in the first steps
 * @param densityStep to what the densities are rounded [-]
 * @param with with what it was exposed and read
 * @param note any words, at most 400 characters
 */
public record FilmStrip(
    String film,
    String developer,
    Dilution dilution,
    Duration time,
    Optional<Temperature> temperature,
    Vessel vessel,
    Optional<LocalDate> developedOn,
    StepLight light,
    StepScale scale,
    List<StripReading> readings,
    Optional<OpticalDensity> baseFog,
    double densityStep,
    MadeWith with,
    String note) {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_NOTE = 400;
  private static final Duration LONGEST = Duration.ofHours(24);

  public FilmStrip {
    film = named("film", film);
    developer = named("developer", developer);
    note = note.strip();
    readings = List.copyOf(readings);
    if (note.length() > LONGEST_NOTE) {
      throw new BadValueException(
          "note", note.length() + " characters", "at most " + LONGEST_NOTE + " characters");
    }
    if (time.isZero() || time.isNegative() || time.compareTo(LONGEST) > 0) {
      throw new BadValueException(
          "development time", time.toSeconds() + " s", "it must be more than 0 and at most 24 h");
    }
    boolean stops = scale instanceof StepScale.CameraStops;
    if (stops != (light == StepLight.CAMERA)) {
      throw new BadValueException(
          "light",
          light.word(),
          stops
              ? "readings by stops are camera exposures"
              : "camera exposures are given by stops, with the index that was metered");
    }
  }

  private static String named(String thing, String typed) {
    String bare = typed.strip();
    if (bare.isEmpty() || bare.length() > LONGEST_NAME) {
      throw new BadValueException(
          thing, bare, "say which, in 1 to " + LONGEST_NAME + " characters");
    }
    return bare;
  }

  /**
   * The readings by log exposure.
   *
   * @throws BadValueException when a place is not on the scale or they are too few
   */
  public CurveReadings curveReadings() {
    return new CurveReadings(
        readings.stream()
            .map(one -> new StepReading(scale.at(one.place()), one.density()))
            .toList(),
        baseFog,
        densityStep,
        light == StepLight.CALIBRATED);
  }

  /** Whether the two are the same film in the same developer, mixed and agitated the same way. */
  public boolean isOfOneKindWith(FilmStrip other) {
    return film.equalsIgnoreCase(other.film)
        && developer.equalsIgnoreCase(other.developer)
        && dilution.label().equals(other.dilution.label())
        && vessel == other.vessel;
  }
}
