package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Means;
import org.wetside.core.instrument.Seen;
import org.wetside.core.instrument.SeenDensity;
import org.wetside.core.instrument.SeenStep;
import org.wetside.core.quantity.OpticalDensity;

/** The calibrations of instruments; they are added and never changed. */
public final class Calibrations {
  private final Session session;

  /** Works in this reading or transaction. */
  public Calibrations(Session session) {
    this.session = session;
  }

  /** Those of an instrument, the newest first. */
  public List<Calibration> of(String instrument) {
    return session.list(
        "SELECT calibration.* FROM calibration JOIN instrument ON instrument.id = instrument_id"
            + " WHERE instrument.name = ? ORDER BY made_on DESC, calibration.id DESC",
        this::read,
        instrument.strip());
  }

  /**
   * Adds one.
   *
   * @throws StoreException when there is no such instrument
   */
  public void add(String instrument, Calibration calibration) {
    long of =
        session
            .first(
                "SELECT id FROM instrument WHERE name = ?",
                row -> row.whole("id"),
                instrument.strip())
            .orElseThrow(() -> new StoreException("there is no instrument " + instrument));
    long id =
        session.insert(
            "INSERT INTO calibration (instrument_id, made_on, tablet, method, note)"
                + " VALUES (?, ?, ?, ?, ?)",
            of,
            calibration.on(),
            calibration.tablet(),
            calibration.method().word(),
            calibration.note());
    int position = 0;
    for (SeenStep step : calibration.steps()) {
      addStep(id, position++, step);
    }
  }

  private void addStep(long calibration, int position, SeenStep step) {
    session.change(
        "INSERT INTO calibration_step VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        calibration,
        position,
        step.label(),
        step.density().value(),
        step.seen() instanceof SeenDensity shown
            ? Optional.of(shown.density().value())
            : Optional.empty(),
        channel(step.seen(), 1, 0),
        channel(step.seen(), 3, 0),
        channel(step.seen(), 3, 1),
        channel(step.seen(), 3, 2));
  }

  private static Optional<Double> channel(Seen seen, int of, int channel) {
    return seen instanceof Means means && means.channels().size() == of
        ? Optional.of(means.channels().get(channel))
        : Optional.empty();
  }

  private Calibration read(Row row) {
    return new Calibration(
        row.day("made_on"),
        row.text("tablet"),
        Calibration.Method.fromWord(row.text("method")),
        session.list(
            "SELECT * FROM calibration_step WHERE calibration_id = ? ORDER BY position",
            Calibrations::readStep,
            row.whole("id")),
        row.text("note"));
  }

  private static SeenStep readStep(Row row) {
    return new SeenStep(row.text("label"), OpticalDensity.of(row.number("density")), seen(row));
  }

  private static Seen seen(Row row) {
    if (row.maybeNumber("seen_density").isPresent()) {
      return new SeenDensity(OpticalDensity.of(row.number("seen_density")));
    }
    return row.maybeNumber("seen_grey").isPresent()
        ? Means.ofGrey(row.number("seen_grey"))
        : Means.ofColours(
            row.number("seen_red"), row.number("seen_green"), row.number("seen_blue"));
  }
}
