package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;
import org.wetside.core.strip.MadeWith;
import org.wetside.core.strip.StepLight;
import org.wetside.core.strip.StepScale;
import org.wetside.core.strip.StripReading;

/** Strips of film that were exposed in steps and read; those withdrawn stay and are not shown. */
public final class Strips {
  private final Session session;

  /** Works in this reading or transaction. */
  public Strips(Session session) {
    this.session = session;
  }

  /**
   * Writes a strip down.
   *
   * @return its number
   */
  public long add(FilmStrip strip, Instant at) {
    long id =
        session.insert(
            "INSERT INTO strip (film, developer, dilution, time_ms, temperature_c, vessel, developed_on,"
                + " light, scale, clear_log_h, metered_index, base_fog, density_step, tablet_name,"
                + " instrument, calibrated_on, note, kept_at)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            strip.film(),
            strip.developer(),
            strip.dilution().label(),
            strip.time(),
            strip.temperature(),
            strip.vessel().word(),
            strip.developedOn(),
            strip.light().word(),
            strip.scale().column(),
            clear(strip.scale()),
            strip.scale() instanceof StepScale.CameraStops camera
                ? Optional.of(camera.metered())
                : Optional.empty(),
            strip.baseFog().map(OpticalDensity::value),
            strip.densityStep(),
            strip.with().tablet(),
            strip.with().instrument(),
            strip.with().calibratedOn(),
            strip.note(),
            at);
    int line = 0;
    for (StripReading reading : strip.readings()) {
      session.change(
          "INSERT INTO strip_reading (strip_id, line, place, density) VALUES (?, ?, ?, ?)",
          id,
          ++line,
          reading.place(),
          reading.density().value());
    }
    if (strip.scale() instanceof StepScale.TabletSteps tablet) {
      int step = 0;
      for (OpticalDensity density : tablet.densities()) {
        session.change(
            "INSERT INTO strip_tablet (strip_id, step, density) VALUES (?, ?, ?)",
            id,
            ++step,
            density.value());
      }
    }
    return id;
  }

  private static OptionalDouble clear(StepScale scale) {
    return scale instanceof StepScale.TabletSteps tablet
        ? OptionalDouble.of(tablet.clear().log10LuxSeconds())
        : OptionalDouble.empty();
  }

  /** All in use: those of one film and developer together, by rising time. */
  public List<KeptStrip> all() {
    return session.list(
        "SELECT * FROM strip WHERE withdrawn_at IS NULL"
            + " ORDER BY film COLLATE NOCASE, developer COLLATE NOCASE, dilution, vessel, time_ms, id",
        this::read);
  }

  /** One that is in use. */
  public Optional<KeptStrip> find(long id) {
    return session.first(
        "SELECT * FROM strip WHERE withdrawn_at IS NULL AND id = ?", this::read, id);
  }

  /**
   * Takes a strip out of use; what was read stays on file.
   *
   * @param replacedBy the strip that takes its place, if one does
   * @return whether there was one in use
   */
  public boolean withdraw(long id, Optional<Long> replacedBy, Instant at) {
    return session.change(
            "UPDATE strip SET withdrawn_at = ?, replaced_by = ?"
                + " WHERE id = ? AND withdrawn_at IS NULL",
            at,
            replacedBy,
            id)
        == 1;
  }

  private KeptStrip read(Row row) {
    long id = row.whole("id");
    OptionalDouble baseFog = row.maybeNumber("base_fog");
    return new KeptStrip(
        id,
        new FilmStrip(
            row.text("film"),
            row.text("developer"),
            Dilution.parse(row.text("dilution")),
            row.duration("time_ms"),
            row.maybeTemperature("temperature_c"),
            Vessel.parse(row.text("vessel")),
            row.maybeDay("developed_on"),
            StepLight.fromWord(row.text("light")),
            scale(id, row),
            readings(id),
            baseFog.isPresent()
                ? Optional.of(OpticalDensity.of(baseFog.getAsDouble()))
                : Optional.empty(),
            row.number("density_step"),
            new MadeWith(
                row.text("tablet_name"), row.text("instrument"), row.maybeDay("calibrated_on")),
            row.text("note")),
        row.moment("kept_at"));
  }

  private StepScale scale(long id, Row row) {
    return switch (row.text("scale")) {
      case StepScale.TabletSteps.COLUMN ->
          new StepScale.TabletSteps(
              LogExposure.ofLog10LuxSeconds(row.number("clear_log_h")),
              session.list(
                  "SELECT density FROM strip_tablet WHERE strip_id = ? ORDER BY step",
                  step -> OpticalDensity.of(step.number("density")),
                  id));
      case StepScale.CameraStops.COLUMN ->
          new StepScale.CameraStops(row.maybeExposureIndex("metered_index").orElseThrow());
      default -> new StepScale.LogExposures();
    };
  }

  private List<StripReading> readings(long id) {
    return session.list(
        "SELECT place, density FROM strip_reading WHERE strip_id = ? ORDER BY line",
        reading ->
            new StripReading(reading.number("place"), OpticalDensity.of(reading.number("density"))),
        id);
  }
}
