package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.development.Agitation;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.source.Citation;

/** The user's own development times; their ids read {@code own-3}. */
public final class OwnTimes {
  private static final String PREFIX = TimeEntry.OWN_PREFIX;

  private final Session session;

  /** Works in this reading or transaction. */
  public OwnTimes(Session session) {
    this.session = session;
  }

  /**
   * Keeps an entry.
   *
   * @param film the film as it was typed
   * @param entry the entry; its id is not looked at
   * @return its id
   */
  public String add(String film, TimeEntry entry, Instant at) {
    return PREFIX
        + session.insert(
            "INSERT INTO own_time (film, film_code, developer, dilution, exposure_index,"
                + " temperature_c, printed_temperature, time_ms, longest_ms, vessel, agitation, agitation_as_typed,"
                + " contrast, source, added_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            film,
            entry.filmCode(),
            entry.developer(),
            entry.dilution().label(),
            entry.exposureIndex().map(ExposureIndex::isoArithmetic),
            entry.temperature(),
            entry.printedTemperature(),
            entry.time(),
            entry.longest(),
            entry.vessel().word(),
            entry.agitation().word(),
            entry.note(),
            entry.contrast(),
            entry.citation().sourceId(),
            at);
  }

  /** All that are in use, in the order they were kept. */
  public List<TimeEntry> inUse() {
    return session.list(
        "SELECT * FROM own_time WHERE withdrawn_at IS NULL ORDER BY id", OwnTimes::read);
  }

  /**
   * Takes an entry out of use.
   *
   * @return whether there was one of that id in use
   */
  public boolean withdraw(String id, Instant at) {
    Optional<Long> number = numberOf(id);
    return number.isPresent()
        && session.change(
                "UPDATE own_time SET withdrawn_at = ? WHERE id = ? AND withdrawn_at IS NULL",
                at,
                number.get())
            == 1;
  }

  private static Optional<Long> numberOf(String id) {
    return id.matches(PREFIX + "\\d{1,15}")
        ? Optional.of(Long.parseLong(id.substring(PREFIX.length())))
        : Optional.empty();
  }

  private static TimeEntry read(Row row) {
    String source = row.text("source");
    return new TimeEntry(
        PREFIX + row.whole("id"),
        row.text("film_code"),
        FilmFormat.ANY,
        row.text("developer"),
        Dilution.parse(row.text("dilution")),
        "",
        row.maybeExposureIndex("exposure_index"),
        row.maybeTemperature("temperature_c"),
        row.text("printed_temperature"),
        row.duration("time_ms"),
        row.maybeDuration("longest_ms"),
        Vessel.parse(row.text("vessel")),
        Agitation.parse(row.text("agitation")),
        row.text("contrast"),
        Citation.of(source),
        TimeEntry.standingOfTyped(source),
        false,
        row.text("agitation_as_typed"));
  }
}
