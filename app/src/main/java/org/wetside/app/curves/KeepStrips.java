package org.wetside.app.curves;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;
import org.wetside.store.Database;
import org.wetside.store.Strips;

/** The strips of film that were measured: keeps them, finds them, takes them out of use. */
public final class KeepStrips {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public KeepStrips(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** All in use: those of one film and developer together, by rising time. */
  public List<KeptStrip> all() {
    return database.get().read(session -> new Strips(session).all());
  }

  /** One in use. */
  public Optional<KeptStrip> find(long id) {
    return database.get().read(session -> new Strips(session).find(id));
  }

  /**
   * Those of these numbers, in that order.
   *
   * @throws BadValueException naming one that is not there
   */
  public List<KeptStrip> find(List<Long> ids) {
    return database
        .get()
        .read(
            session -> {
              Strips strips = new Strips(session);
              return ids.stream()
                  .map(
                      id ->
                          strips
                              .find(id)
                              .orElseThrow(
                                  () ->
                                      new BadValueException(
                                          "curve", String.valueOf(id), "there is no such curve")))
                  .toList();
            });
  }

  /** Writes a strip down. */
  public KeptStrip keep(FilmStrip strip) {
    Instant now = clock.instant();
    long id = database.get().inTransaction(session -> new Strips(session).add(strip, now));
    return new KeptStrip(id, strip, now);
  }

  /**
   * Writes a strip down in place of another, which stays on file out of use.
   *
   * @throws BadValueException when the other is not in use
   */
  public KeptStrip keepInPlaceOf(long old, FilmStrip strip) {
    Instant now = clock.instant();
    long id =
        database
            .get()
            .inTransaction(
                session -> {
                  Strips strips = new Strips(session);
                  long added = strips.add(strip, now);
                  if (!strips.withdraw(old, Optional.of(added), now)) {
                    throw new BadValueException(
                        "curve", String.valueOf(old), "it is not in use any more");
                  }
                  return added;
                });
    return new KeptStrip(id, strip, now);
  }

  /** Takes a strip out of use; false when there is none of that number. */
  public boolean withdraw(long id) {
    return database
        .get()
        .inTransaction(
            session -> new Strips(session).withdraw(id, Optional.empty(), clock.instant()));
  }
}
