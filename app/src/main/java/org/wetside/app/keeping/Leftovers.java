package org.wetside.app.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A database file with what SQLite may have put beside it. */
final class Leftovers {
  private Leftovers() {}

  /** What was written last and is not in the file itself yet. */
  static Path log(Path database) {
    return beside(database, "-wal");
  }

  /** What processes share while they have it open; worth nothing afterwards. */
  static Path shared(Path database) {
    return beside(database, "-shm");
  }

  /** Takes a database away, whole. */
  static void remove(Path database) throws IOException {
    for (Path one : new Path[] {shared(database), log(database), database}) {
      Files.deleteIfExists(one);
    }
  }

  private static Path beside(Path database, String ending) {
    return database.resolveSibling(database.getFileName() + ending);
  }
}
