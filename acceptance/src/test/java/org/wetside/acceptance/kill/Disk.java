package org.wetside.acceptance.kill;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.wetside.core.run.RunState;
import org.wetside.store.Database;
import org.wetside.store.Runs;

/**
 * What a killed server left on the disk, read from a copy: the next server must find it as it was
 * left.
 */
final class Disk {
  private Disk() {}

  /** A run, folded from its stored events alone. */
  static RunState run(Path home, Path copies, long run) throws IOException {
    Path copy = Files.createTempDirectory(copies, "left");
    for (String name : List.of("wetside.db", "wetside.db-wal")) {
      if (Files.exists(home.resolve(name))) {
        Files.copy(home.resolve(name), copy.resolve(name));
      }
    }
    try (Database database = Database.open(copy.resolve("wetside.db"))) {
      return database.read(session -> new Runs(session).state(run, List.of()));
    }
  }
}
