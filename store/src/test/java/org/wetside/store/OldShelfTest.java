package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;

/** A shelf as version 8 kept it comes over without losing a line. Every bottle is invented. */
class OldShelfTest {
  @TempDir Path folder;

  private Path old() throws SQLException {
    Path file = folder.resolve("old.db");
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement sql = connection.createStatement()) {
      for (String migration : Schema.FILES) {
        if (Integer.parseInt(migration.substring(1, migration.indexOf("__"))) <= 8) {
          sql.executeUpdate(Schema.text(migration));
        }
      }
      bottle(sql, 1, "F", "fixer", "working", "fixer", 0, 1);
      bottle(sql, 2, "D", "D-76", "stock", "developer", 1, 0);
      bottle(sql, 3, "F", "fixer", "working", "fixer", 0, 0);
      sql.executeUpdate(
          "INSERT INTO run (id, name, tank, process, process_name, developer, dilution,"
              + " time_standing, time_source, opened_at, phase) VALUES (7, 'r', 't', 'p', 'p', 'd',"
              + " 'stock', 'published', 's', '2026-01-02T18:00:00.000Z', 'finished')");
      sql.executeUpdate(
          "INSERT INTO run_roll VALUES (7, 1, 'TM-1', 'T-MAX 100 at 100', 'bottom', 1),"
              + " (7, 2, 'TX-1', 'TRI-X 400 at 400', 'top', 0.75)");
      sql.executeUpdate(
          "INSERT INTO roll (number, format, film, film_code, kind, title, precious, added_at,"
              + " state, note) VALUES ('TM-1', '135', 'T-MAX 100', '100TMX', 'b/w', '', 0,"
              + " '2026-01-01T18:00:00.000Z', 'processed', '')");
      entry(sql, 1, "filled", 1000, 0, "", "");
      entry(sql, 1, "opened", 0, 0, "", "");
      entry(sql, 1, "taken out", -600, 1.75, "7", "");
      entry(sql, 1, "poured back", 582.5, 0, "7", "");
      entry(sql, 1, "taken out", -82.5, 0, "", "spilled");
      entry(sql, 1, "corrected", -100, 0, "", "looked");
      entry(sql, 1, "clip test failed", 0, 0, "", "slow");
      entry(sql, 1, "discarded", -800, 0, "", "to collection");
      entry(sql, 2, "filled", 500, 0, "", "");
      entry(sql, 2, "topped up", 100, 0, "", "fresh");
      entry(sql, 2, "taken out", -300, 2, "99", "");
      entry(sql, 3, "filled", 900, 0, "", "");
      sql.executeUpdate("PRAGMA user_version = 8");
    }
    return file;
  }

  private static void bottle(
      Statement sql,
      int id,
      String letter,
      String contents,
      String strength,
      String bath,
      int oneShot,
      int discarded)
      throws SQLException {
    sql.executeUpdate(
        "INSERT INTO bottle VALUES (%d, '%s', '%s', '%s', '%s', 1000, %d, '2026-01-01', NULL, 'n', %d)"
            .formatted(id, letter, contents, strength, bath, oneShot, discarded));
  }

  private static void entry(
      Statement sql, int bottle, String kind, double change, double film, String run, String note)
      throws SQLException {
    sql.executeUpdate(
        ("INSERT INTO bottle_entry (bottle_id, kind, change_volume_ml, film_rolls, run, entered_at,"
                + " note) VALUES (%d, '%s', %s, %s, '%s', '2026-01-02T19:00:00.000Z', '%s')")
            .formatted(bottle, kind, change, film, run, note));
  }

  @Test
  void everyLineComesOver() throws SQLException {
    try (Database database = Database.open(old())) {
      List<String> kinds =
          database.read(
              s -> s.list("SELECT kind FROM bottle_line ORDER BY id", row -> row.text("kind")));
      assertThat(kinds)
          .containsExactly(
              "filled",
              "opened",
              "used",
              "poured back",
              "taken out",
              "corrected",
              "clip test failed",
              "discarded",
              "filled",
              "topped up",
              "used",
              "filled");
      List<LedgerLine> gone =
          database.read(s -> new LedgerRows(s).all(1)).stream().map(p -> p.line()).toList();
      assertThat(gone.get(5).what())
          .isEqualTo(new BottleEvent.Corrected(Volume.ofMillilitres(800)));
      assertThat(gone.get(4).note()).isEqualTo("spilled");
      assertThat(gone.get(2).what())
          .isEqualTo(
              new BottleEvent.Used(
                  Volume.ofMillilitres(600),
                  List.of(
                      new FilmUse("TM-1", "T-MAX 100 at 100", UnitOfUse.ONE_ROLL, true),
                      new FilmUse("TX-1", "TRI-X 400 at 400", UnitOfUse.ofRolls(0.75), false))));
      List<String> complaints = database.read(s -> new LedgerCheck(s).complaints());
      assertThat(complaints).isEmpty();
    }
  }

  @Test
  void itsBottlesStandAsTheyStood() throws SQLException {
    try (Database database = Database.open(old())) {
      Bottle developer = database.read(s -> new Bottles(s).find("D")).orElseThrow();
      assertThat(developer.left()).isEqualTo(Volume.ofMillilitres(300));
      assertThat(developer.film()).isEqualTo(UnitOfUse.ofRolls(2));
      assertThat(developer.label().role()).isEqualTo(BottleRole.STOCK);
      assertThat(developer.label().use()).isEqualTo(AfterPouring.ONE_SHOT);
      assertThat(developer.label().note()).isEqualTo("n");
      Bottle fresh = database.read(s -> new Bottles(s).find("F")).orElseThrow();
      assertThat(fresh.left()).isEqualTo(Volume.ofMillilitres(900));
      assertThat(fresh.state().lines()).isEqualTo(1);
    }
  }

  /** The old book knew of the failed test and of the rolls: they are recalled now. */
  @Test
  void theRollsOfAFailedBathAreOnTheRecallList() throws SQLException {
    try (Database database = Database.open(old())) {
      List<String> recalled =
          database.read(s -> new Recalls(s).all()).stream().map(one -> one.roll()).toList();
      assertThat(recalled).containsExactly("TM-1", "TX-1");
    }
  }
}
