package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.thermal.Thermometer;
import org.wetside.core.thermal.ThermometerOffset;

/** The thermometers, found by name in any case, with every comparison that was ever made. */
public final class Thermometers {
  private static final String NEWEST_OFFSET =
      "SELECT * FROM thermometer_offset WHERE thermometer_id = ? ORDER BY id DESC";

  private final Session session;

  /** Works in this reading or transaction. */
  public Thermometers(Session session) {
    this.session = session;
  }

  /** All thermometers by name, each with its last offset. */
  public List<Thermometer> all() {
    return session.list("SELECT * FROM thermometer ORDER BY name", this::read);
  }

  /** One thermometer. */
  public Optional<Thermometer> find(String name) {
    return session.first("SELECT * FROM thermometer WHERE name = ?", this::read, name.strip());
  }

  /** Adds a thermometer nobody has compared yet; its name must be free. */
  public void add(String name) {
    session.change("INSERT INTO thermometer (name) VALUES (?)", name.strip());
  }

  /**
   * Notes a comparison; the last one counts from now on.
   *
   * @throws StoreException when there is no such thermometer
   */
  public void compared(String name, ThermometerOffset offset) {
    session.change(
        "INSERT INTO thermometer_offset (thermometer_id, correction_k, at_temperature_c, doubt_k,"
            + " found_on, how) VALUES (?, ?, ?, ?, ?, ?)",
        id(name).orElseThrow(() -> new StoreException("there is no thermometer " + name)),
        offset.correction().kelvins(),
        offset.at(),
        offset.doubt().kelvins(),
        offset.found(),
        offset.how());
  }

  /** Every comparison of a thermometer, the newest first. */
  public List<ThermometerOffset> history(String name) {
    return id(name)
        .map(known -> session.list(NEWEST_OFFSET, Thermometers::readOffset, known))
        .orElse(List.of());
  }

  /** Takes a thermometer away with its comparisons; false when there is none. */
  public boolean remove(String name) {
    Optional<Long> id = id(name);
    id.ifPresent(
        known -> {
          session.change("DELETE FROM thermometer_offset WHERE thermometer_id = ?", known);
          session.change("DELETE FROM thermometer WHERE id = ?", known);
        });
    return id.isPresent();
  }

  private Optional<Long> id(String name) {
    return session.first(
        "SELECT id FROM thermometer WHERE name = ?", row -> row.whole("id"), name.strip());
  }

  private Thermometer read(Row row) {
    return new Thermometer(
        row.text("name"), session.first(NEWEST_OFFSET, Thermometers::readOffset, row.whole("id")));
  }

  private static ThermometerOffset readOffset(Row row) {
    return new ThermometerOffset(
        TemperatureDifference.ofKelvins(row.number("correction_k")),
        row.temperature("at_temperature_c"),
        TemperatureDifference.ofKelvins(row.number("doubt_k")),
        row.day("found_on"),
        row.text("how"));
  }
}
