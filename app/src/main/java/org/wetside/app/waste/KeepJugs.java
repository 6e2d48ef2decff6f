package org.wetside.app.waste;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.Jug;
import org.wetside.store.Database;
import org.wetside.store.Session;
import org.wetside.store.WasteBook;

/** The jugs there are. */
public final class KeepJugs {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public KeepJugs(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Every jug, by name. */
  public List<FilledJug> all() {
    return database.get().read(session -> new WasteBook(session).all());
  }

  /** The jug of that name. */
  public Optional<FilledJug> find(String name) {
    return database.get().read(session -> new WasteBook(session).find(name));
  }

  /**
   * The jug of that name.
   *
   * @throws BadValueException when there is none
   */
  public FilledJug of(String name) {
    return database.get().<FilledJug>read(session -> in(session, name));
  }

  /** What in it nothing is on file about, so that no combination with it can be judged. */
  public List<String> unknownIn(FilledJug jug) {
    return new WasteMaterials().unknownIn(jug);
  }

  /**
   * Puts an empty jug there.
   *
   * @throws BadValueException when there is one of that name
   */
  public FilledJug add(Jug jug) {
    return database
        .get()
        .inTransaction(
            session -> {
              WasteBook book = new WasteBook(session);
              if (book.find(jug.name()).isPresent()) {
                throw new BadValueException(
                    "name of the jug", jug.name(), "there is a jug of that name; choose another");
              }
              book.add(jug, clock.instant());
              return in(session, jug.name());
            });
  }

  /** The jug of that name, within a transaction. */
  static FilledJug in(Session session, String name) {
    return new WasteBook(session)
        .find(name)
        .orElseThrow(() -> new BadValueException("jug", name, "there is no jug of that name"));
  }
}
