package org.wetside.app.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.store.Database;
import org.wetside.store.DatabaseFile;
import org.wetside.store.Session;
import org.wetside.store.StoreException;

/**
 * Checks a database: the file itself, that everything in it can be read, that every run and every
 * bottle is what its events make of it. Only reads, also while a server writes.
 */
public final class CheckData {
  private CheckData() {}

  /**
   * Checks the data of a home.
   *
   * @throws CannotDoException when there is none, or it cannot be read at all, or it is newer than
   *     this program
   */
  public static Findings of(Home home) {
    if (!Files.exists(home.database())) {
      throw new CannotDoException(
          "there is nothing to check: the data folder " + home.folder() + " has no data yet");
    }
    return of(home.database());
  }

  /**
   * Checks one file, such as a backup.
   *
   * @throws CannotDoException as {@link #of(Home)}
   */
  public static Findings of(Path file) {
    try {
      DatabaseFile found = new DatabaseFile(file);
      int version = found.version();
      return found.isOlder() ? upToDate(file).of(file, version) : checked(file, version);
    } catch (StoreException refused) {
      throw new CannotDoException(String.valueOf(refused.getMessage()), refused);
    }
  }

  /** An older file is left as it is: a copy of it is migrated and checked. */
  private static Findings upToDate(Path file) {
    try {
      Path folder = Files.createTempDirectory("wetside-check");
      Path copy = folder.resolve("copy.db");
      try {
        DatabaseFile migrated = new DatabaseFile(copy);
        new DatabaseFile(file).copyTo(copy, false);
        migrated.bringUpToDate();
        return checked(copy, migrated.version());
      } finally {
        Leftovers.remove(copy);
        Files.deleteIfExists(folder);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("no room for a copy to check: " + failure, failure);
    }
  }

  private static Findings checked(Path file, int version) {
    List<Fault> faults = new ArrayList<>();
    new DatabaseFile(file).faults().forEach(line -> faults.add(new Fault("file", line)));
    try (Database database = Database.openToRead(file).orElseThrow()) {
      return database.read(session -> read(session, file, version, faults));
    } catch (StoreException broken) {
      if (faults.isEmpty()) {
        throw broken;
      }
      return new Findings(file, version, false, 0, 0, 0, 0, faults);
    }
  }

  private static Findings read(Session session, Path file, int version, List<Fault> faults) {
    RunBooks runs = new RunBooks(session, faults);
    BottleBooks bottles = new BottleBooks(session, faults);
    ReadableData rest = new ReadableData(session, faults);
    runs.check();
    bottles.check();
    rest.check();
    return new Findings(
        file, version, false, runs.runs(), runs.events(), bottles.bottles(), rest.rolls(), faults);
  }
}
