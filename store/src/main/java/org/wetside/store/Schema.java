package org.wetside.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The version of the tables this program knows, and the files that make them. The database carries
 * the same number in {@code PRAGMA user_version}: comparing the two is all an up-to-date database
 * costs.
 */
final class Schema {
  /** The migrations under {@code db/migration}, in order; add yours at its number. */
  static final List<String> FILES =
      List.of(
          "V1__drawer.sql",
          "V2__times.sql",
          "V3__run.sql",
          "V4__shelf.sql",
          "V5__process.sql",
          "V6__screens.sql",
          "V7__checks.sql",
          "V8__dose.sql",
          "V9__ledger.sql",
          "V10__formula.sql",
          "V11__water.sql",
          "V12__waste.sql",
          "V13__test.sql",
          "V14__marks.sql",
          "V15__measures.sql",
          "V16__learning.sql",
          "V17__instruments.sql",
          "V18__strip.sql",
          "V19__test_roll.sql",
          "V20__curves.sql");

  private Schema() {}

  /** The version of the tables this program makes: that of the last migration. */
  static int version() {
    String last = FILES.get(FILES.size() - 1);
    return Integer.parseInt(last.substring(1, last.indexOf("__")));
  }

  /** The version a database says it has; 0 for an empty one. */
  static int of(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery("PRAGMA user_version")) {
      return result.getInt(1);
    }
  }

  /** Writes this program's version into a database that was just migrated. */
  static void mark(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate("PRAGMA user_version = " + version());
    }
  }

  /** Makes all tables at once in an empty database. */
  static void createIn(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String file : FILES) {
        statement.executeUpdate(text(file));
      }
    }
    mark(connection);
  }

  /** A migration as it is written. */
  static String text(String file) {
    try (InputStream in = Schema.class.getResourceAsStream("/db/migration/" + file)) {
      if (in == null) {
        throw new IllegalStateException("migration " + file + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new StoreException("reading migration " + file, failure);
    }
  }

  /**
   * The version found, when this program knows it.
   *
   * @throws StoreException when a newer program wrote the file
   */
  static int checked(int found, Path file) {
    if (found > version()) {
      throw new StoreException(
          "the database "
              + file
              + " has version "
              + found
              + ", this program knows versions up to "
              + version()
              + ". Nothing was changed. Use the newer program.");
    }
    return found;
  }
}
