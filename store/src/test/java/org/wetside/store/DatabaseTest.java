package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {
  @TempDir Path folder;

  @Test
  void keepsWhatWasCommittedAcrossOpenings() {
    try (Database database = Database.open(file())) {
      database.change(s -> s.change("INSERT INTO setting VALUES ('theme', 'night')"));
    }
    try (Database database = Database.open(file())) {
      assertThat(themes(database)).containsExactly("night");
    }
  }

  @Test
  void keepsNothingOfATransactionThatFails() {
    try (Database database = Database.open(file())) {
      assertThatThrownBy(
              () ->
                  database.change(
                      s -> {
                        s.change("INSERT INTO setting VALUES ('theme', 'night')");
                        throw new IllegalStateException("half way");
                      }))
          .hasMessage("half way");
      assertThat(themes(database)).isEmpty();
    }
  }

  @Test
  void writesThroughALogAndSyncsEveryCommit() {
    try (Database database = Database.open(file())) {
      assertThat(pragma(database, "journal_mode")).isEqualTo("wal");
      assertThat(pragma(database, "synchronous")).as("2 is FULL").isEqualTo("2");
      assertThat(pragma(database, "foreign_keys")).isEqualTo("1");
      assertThat(pragma(database, "user_version")).isEqualTo(String.valueOf(Schema.version()));
    }
  }

  @Test
  void aReadingDoesNotSeeWhatIsNotYetCommitted() {
    try (Database database = Database.open(file())) {
      database.change(
          s -> {
            s.change("INSERT INTO setting VALUES ('theme', 'night')");
            assertThat(themes(database)).isEmpty();
          });
      assertThat(themes(database)).hasSize(1);
    }
  }

  @Test
  void refusesADatabaseOfANewerProgramAndLeavesItUntouched() throws SQLException, IOException {
    Database.open(file()).close();
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        var statement = connection.createStatement()) {
      statement.executeUpdate("PRAGMA journal_mode = DELETE");
      statement.executeUpdate("PRAGMA user_version = 9999");
    }
    byte[] before = Files.readAllBytes(file());
    assertThatThrownBy(() -> Database.open(file()))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("version 9999")
        .hasMessageContaining("up to " + Schema.version())
        .hasMessageContaining("Nothing was changed");
    assertThatThrownBy(() -> Database.openToRead(file())).isInstanceOf(StoreException.class);
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void aMissingDatabaseReadsAsEmptyAndIsNotMade() {
    try (Database database = Database.openToRead(file()).orElseThrow()) {
      assertThat(themes(database)).isEmpty();
    }
    assertThat(file()).doesNotExist();
  }

  @Test
  void readingOnlyRefusesToWrite() {
    Database.open(file()).close();
    try (Database database = Database.openToRead(file()).orElseThrow()) {
      assertThatThrownBy(() -> database.change(s -> s.change("DELETE FROM setting")))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("opened only to read");
    }
  }

  /** A database made at once and one that was migrated step by step are the same. */
  @Test
  void anOlderDatabaseIsBroughtUpToDate() throws SQLException {
    Database.open(file()).close();
    for (int version = 0; version < Schema.version(); version++) {
      Path older = folder.resolve("version-" + version + ".db");
      makeAsOf(version, older);
      assertThat(Database.openToRead(older)).as("version %d", version).isEmpty();

      Database.open(older).close();

      assertThat(tables(older)).as("version %d", version).isEqualTo(tables(file()));
      assertThat(Database.openToRead(older)).hasValueSatisfying(Database::close);
    }
  }

  private static void makeAsOf(int version, Path file) throws SQLException {
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = connection.createStatement()) {
      for (String migration : Schema.FILES) {
        if (number(migration) <= version) {
          statement.executeUpdate(Schema.text(migration));
        }
      }
      statement.executeUpdate("PRAGMA user_version = " + version);
    }
  }

  private static int number(String migration) {
    return Integer.parseInt(migration.substring(1, migration.indexOf("__")));
  }

  private static List<String> tables(Path file) throws SQLException {
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = connection.createStatement();
        var rows =
            statement.executeQuery(
                "SELECT type || ' ' || name || ' ' || coalesce(sql, '') FROM sqlite_master"
                    + " WHERE tbl_name NOT LIKE 'flyway%' ORDER BY 1")) {
      List<String> found = new ArrayList<>();
      while (rows.next()) {
        found.add(rows.getString(1));
      }
      return found;
    }
  }

  @Test
  void everyTableIsStrict() {
    try (Database database = Database.open(file())) {
      List<String> loose =
          database.read(
              s ->
                  s.list(
                      "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
                          + " AND strict = 0 AND name NOT LIKE 'sqlite_%'"
                          + " AND name NOT LIKE 'flyway_%'",
                      row -> row.text("name")));
      assertThat(loose).isEmpty();
    }
  }

  @Test
  void everyMigrationFileIsListed() throws Exception {
    Path files = Path.of(Schema.class.getResource("/db/migration").toURI());
    try (var found = Files.list(files)) {
      assertThat(found.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(Schema.FILES);
    }
  }

  private Path file() {
    return folder.resolve("wetside.db");
  }

  private static List<String> themes(Database database) {
    return database.read(s -> s.list("SELECT value FROM setting", row -> row.text("value")));
  }

  private static String pragma(Database database, String name) {
    return database.inTransaction(
        s -> s.first("SELECT * FROM pragma_" + name, row -> row.text(name)).orElseThrow());
  }
}
