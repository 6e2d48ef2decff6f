package org.wetside.app.waste;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import org.wetside.app.shelf.Today;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.HandedIn;
import org.wetside.store.Database;
import org.wetside.store.WasteBook;

/** Hands a jug in: it comes back empty, and the book says when and to whom. */
public final class HandIn {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public HandIn(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Enters it.
   *
   * @param on the day, not to come and not before the last pouring
   * @param to whom
   * @throws org.wetside.core.quantity.BadValueException when there is nothing in it, the day cannot
   *     be or nobody was named
   */
  public FilledJug handIn(String jug, LocalDate on, String to, String note) {
    return database
        .get()
        .inTransaction(
            session -> {
              FilledJug full = KeepJugs.in(session, jug);
              full.requireHandInOn(on, Today.of(clock), ZoneId.systemDefault());
              new WasteBook(session)
                  .handIn(full.jug(), new HandedIn(on, to, full.filled(), note), clock.instant());
              return KeepJugs.in(session, jug);
            });
  }
}
