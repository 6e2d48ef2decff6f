package org.wetside.store;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * A database as a file: to look at and to copy, whatever its version and whoever is writing in it.
 * Nothing is kept open and nothing in it is changed, but by {@link #bringUpToDate}.
 */
public final class DatabaseFile {
  private static final String REFERENCE =
      "table %1$s, row %2$s: what it refers to in %3$s is not there";

  private final Path file;

  /**
   * @param file need not exist yet
   */
  public DatabaseFile(Path file) {
    this.file = file;
  }

  /**
   * The version of its tables.
   *
   * @throws StoreException when there is no such file, or it is damaged, not one of this program,
   *     or newer than this program
   */
  public int version() {
    return reading(
        () -> {
          try (Connection connection = opened()) {
            int version = Schema.of(connection);
            if (version == 0 || !Missing.known(connection)) {
              throw new StoreException(file + " is a database, but not one of Wetside");
            }
            return Schema.checked(version, file);
          }
        });
  }

  /** Whether {@link #bringUpToDate} has something to do. */
  public boolean isOlder() {
    return version() < Schema.version();
  }

  /**
   * What is wrong with it as a file, one sentence each: pages and indexes by SQLite's own check,
   * references that lead nowhere, tables that are not there. Empty when it is sound.
   *
   * @throws StoreException when it cannot even be read that far
   */
  public List<String> faults() {
    return reading(
        () -> {
          try (Connection connection = opened()) {
            List<String> faults = new ArrayList<>();
            look(faults, () -> pages(connection));
            look(faults, () -> lines(connection, "PRAGMA foreign_key_check", REFERENCE));
            look(faults, () -> Missing.from(connection));
            return faults;
          }
        });
  }

  /** One that cannot be finished has found something too. */
  private static void look(List<String> faults, Callable<List<String>> search) {
    try {
      faults.addAll(SqliteWords.doing(search, "cannot be read further"));
    } catch (StoreException broken) {
      faults.add(String.valueOf(broken.getMessage()));
    }
  }

  private List<String> badPages() {
    return reading(
        () -> {
          try (Connection connection = opened()) {
            return pages(connection);
          }
        });
  }

  private static List<String> pages(Connection connection) throws SQLException {
    return lines(connection, "PRAGMA integrity_check", "%1$s").stream()
        .filter(line -> !line.equals("ok"))
        .toList();
  }

  /**
   * Copies all that is committed, as of one moment, into one file of its own: written beside the
   * target, read back and found sound, synced to disk, then named. A write under way is neither
   * waited for nor held up.
   *
   * @param replace whether a file that is there may be replaced
   * @throws StoreException when it is damaged, or the target cannot be written; nothing is left
   */
  public void copyTo(Path target, boolean replace) {
    Landing landing = new Landing(target);
    landing.checkRoom(sizeBytes());
    landing.write(
        beside -> {
          long unused = SqliteWords.doing(() -> vacuum(beside), "writing " + target);
          List<String> faults = new DatabaseFile(beside).badPages();
          if (!faults.isEmpty()) {
            throw new StoreException(
                "the database " + file + " is damaged, so no copy was kept: " + faults.get(0));
          }
        },
        replace);
  }

  private long vacuum(Path target) throws SQLException {
    mustExist();
    try (Connection connection = Connections.toRead(file);
        PreparedStatement copy = connection.prepareStatement("VACUUM INTO ?")) {
      copy.setString(1, target.toAbsolutePath().toString());
      return copy.executeUpdate();
    }
  }

  /** How large it is, what has not yet been written back included. */
  public long sizeBytes() {
    return reading(
        () -> {
          try (Connection connection = opened()) {
            return number(connection, "PRAGMA page_count") * number(connection, "PRAGMA page_size");
          }
        });
  }

  /** Migrates it to this program's version; the caller alone knows of the file. */
  public void bringUpToDate() {
    Database.open(file).close();
  }

  /** Writes everything back into the one file, so that no second file belongs to it. */
  public void settle() {
    boolean unused =
        reading(
            () -> {
              try (Connection connection = Connections.toWrite(file);
                  Statement statement = connection.createStatement()) {
                return statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
              }
            });
  }

  /** A connection of its own, on which everything that is read is of one moment. */
  private Connection opened() throws SQLException {
    mustExist();
    Connection connection = Connections.toRead(file);
    connection.setAutoCommit(false);
    return connection;
  }

  private <T> T reading(Callable<T> work) {
    return SqliteWords.doing(work, "reading " + file);
  }

  private void mustExist() {
    if (!Files.isRegularFile(file)) {
      throw StoreException.saying(
          Files.exists(file) ? file + " is not a file" : "there is no file " + file,
          new NoSuchFileException(file.toString()));
    }
  }

  private static List<String> lines(Connection connection, String sql, String words)
      throws SQLException {
    List<String> lines = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      int columns = rows.getMetaData().getColumnCount();
      while (rows.next()) {
        Object[] values = new Object[columns];
        for (int i = 0; i < columns; i++) {
          values[i] = rows.getObject(i + 1);
        }
        lines.add(String.format(words, values));
      }
    }
    return lines;
  }

  private static long number(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      return row.getLong(1);
    }
  }
}
