package org.wetside.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;

/** Opens SQLite connections with the pragmas the store relies on; pragmas are per connection. */
final class Connections {
  private static final int BUSY_MS = 5_000;

  private Connections() {}

  static String url(Path file) {
    return JDBC.PREFIX + file.toAbsolutePath();
  }

  /** Reads and writes: write-ahead log, every commit synced to disk, foreign keys checked. */
  static Connection toWrite(Path file) throws SQLException {
    SQLiteConfig config = config();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    return JDBC.createConnection(url(file), config.toProperties());
  }

  /** Reads only. */
  static Connection toRead(Path file) throws SQLException {
    SQLiteConfig config = config();
    config.setReadOnly(true);
    return JDBC.createConnection(url(file), config.toProperties());
  }

  /** An empty database that lives as long as its connection. */
  static Connection inMemory() throws SQLException {
    return JDBC.createConnection(JDBC.PREFIX + ":memory:", new Properties());
  }

  private static SQLiteConfig config() {
    SQLiteConfig config = new SQLiteConfig();
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_MS);
    return config;
  }
}
