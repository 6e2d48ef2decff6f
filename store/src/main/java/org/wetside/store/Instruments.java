package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.InstrumentKind;

/** The instruments that read density, found by name in any case. */
public final class Instruments {
  private final Session session;

  /** Works in this reading or transaction. */
  public Instruments(Session session) {
    this.session = session;
  }

  /** All of them by name. */
  public List<Instrument> all() {
    return session.list("SELECT * FROM instrument ORDER BY name", Instruments::read);
  }

  /** One of them. */
  public Optional<Instrument> find(String name) {
    return session.first(
        "SELECT * FROM instrument WHERE name = ?", Instruments::read, name.strip());
  }

  /** Adds one; its name must be free. */
  public void add(Instrument instrument) {
    session.change(
        "INSERT INTO instrument (name, kind, note) VALUES (?, ?, ?)",
        instrument.name(),
        instrument.kind().word(),
        instrument.note());
  }

  /** Takes one away with its calibrations; false when there is none. */
  public boolean remove(String name) {
    Optional<Long> id =
        session.first(
            "SELECT id FROM instrument WHERE name = ?", row -> row.whole("id"), name.strip());
    id.ifPresent(
        known -> {
          session.change(
              "DELETE FROM calibration_step WHERE calibration_id IN"
                  + " (SELECT id FROM calibration WHERE instrument_id = ?)",
              known);
          session.change("DELETE FROM calibration WHERE instrument_id = ?", known);
          session.change("DELETE FROM instrument WHERE id = ?", known);
        });
    return id.isPresent();
  }

  private static Instrument read(Row row) {
    return new Instrument(
        row.text("name"), InstrumentKind.fromWord(row.text("kind")), row.text("note"));
  }
}
