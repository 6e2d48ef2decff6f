package org.wetside.app.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;

/** A check that finds nothing must have been able to find something. */
class CheckDataTest {
  private static final Instant NOW = Instant.parse("2026-01-14T20:14:00Z");

  @TempDir static Path folder;
  private static Path lived;

  @TempDir Path here;

  @BeforeAll
  static void live() {
    Home home = new Home(folder);
    try (Wetside wetside = FillDemo.into(home, Clock.fixed(NOW, ZoneOffset.UTC))) {
      lived = folder.resolve("lived.db");
      wetside.makeBackup().to(lived, false);
    }
  }

  private Path copy() throws java.io.IOException {
    return Files.copy(lived, here.resolve("data.db"));
  }

  @Test
  void theDemoIsClean() {
    Findings findings = CheckData.of(lived);
    assertThat(findings.faults()).isEmpty();
    assertThat(findings.runs()).isEqualTo(3);
    assertThat(findings.events()).isGreaterThan(30);
    assertThat(findings.bottles()).isEqualTo(5);
    assertThat(findings.rolls()).isEqualTo(9);
    assertThat(findings.older()).isFalse();
  }

  @Test
  void checkingLeavesNothingBesideTheFile() throws java.io.IOException {
    Path alone = Files.createDirectory(here.resolve("alone"));
    Path file = Files.copy(lived, alone.resolve("data.db"));
    byte[] before = Files.readAllBytes(file);
    assertThat(CheckData.of(file).clean()).isTrue();
    assertThat(alone).isDirectoryContaining(file::equals);
    assertThat(alone.toFile().list()).hasSize(1);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DELETE FROM run_event WHERE run_id = 1 AND sequence = 3 | run 1 | last has number",
        "DELETE FROM run_step WHERE run_id = 2 AND position = 1 | run 2 | steps are stored",
        "UPDATE run SET phase = 'abandoned' WHERE id = 1 | run 1 | its phase is stored as abandoned",
        "UPDATE run SET started_at = '2026-01-01T00:00:00Z' WHERE id = 3 | run 3 | first pour",
        "UPDATE run SET ended_at = NULL WHERE id = 2 | run 2 | its end is stored as none",
        "UPDATE load SET state = 'planned' WHERE id = 1 | run 1 | must be done",
        "UPDATE run_event SET kind = 'danced' WHERE run_id = 1 AND sequence = 2 | run 1 | cannot be",
        "UPDATE roll SET state = 'loaded' WHERE number = 'TM-09' | roll TM-09 | in no load",
        "UPDATE roll SET added_at = 'yesterday' WHERE number = 'TM-09' | waiting rolls | cannot be",
        "UPDATE tank SET vessel = 'bucket' | tanks | cannot be read",
        "UPDATE bottle SET left_volume_ml = 5 WHERE id = 1 | bottle D (1) | left is kept as 5",
        "UPDATE bottle SET film_rolls = 0 WHERE id = 1 | bottle D (1) | film is kept as",
        "UPDATE bottle SET touched_at = '2020-01-01T00:00:00Z' WHERE id = 1 | bottle D (1) | lastTouched",
        "UPDATE bottle_line SET volume_ml = 1 WHERE id IN (SELECT max(id) FROM bottle_line"
            + " WHERE bottle_id = 1) | bottle D (1) | the fold",
        "DELETE FROM bottle_line WHERE id IN (SELECT min(id) FROM bottle_line WHERE bottle_id = 1)"
            + " | bottle D (1) | does not begin with a filling",
        "UPDATE bottle_line SET kind = 'spilt' WHERE bottle_id = 1 | bottle number 1 | cannot be read",
        "DELETE FROM load WHERE id = 1 | file | what it refers to in load is not there",
        "DROP INDEX roll_by_state | file | the index roll_by_state is missing",
        "DROP TABLE stock_minimum | file | the table stock_minimum is missing",
        "ALTER TABLE run DROP COLUMN room_c | file | the column room_c of table run is missing",
      })
  void eachFaultIsSaid(String change, String where, String what) throws java.io.IOException {
    Path file = copy();
    Tampered.with(file, "PRAGMA foreign_keys = OFF", change);
    assertThat(CheckData.of(file).faults())
        .anySatisfy(
            fault -> {
              assertThat(fault.where()).isEqualTo(where);
              assertThat(fault.what()).contains(what);
            });
  }

  @Test
  void aPageThatWasSpoiledIsFound() throws java.io.IOException {
    Path file = copy();
    Tampered.flip(file, Tampered.page(file, "roll"), 64);
    Findings findings = CheckData.of(file);
    assertThat(findings.faults()).extracting(Fault::where).contains("file");
  }

  @Test
  void whatCannotBeReadAtAllIsRefusedInWords() throws java.io.IOException {
    Path file = copy();
    Tampered.flip(file, 0, 32);
    assertThatThrownBy(() -> CheckData.of(file))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("not a database");
    assertThatThrownBy(() -> CheckData.of(here.resolve("none.db")))
        .hasMessage("there is no file " + here.resolve("none.db"));
    assertThatThrownBy(() -> CheckData.of(new Home(here.resolve("new"))))
        .hasMessageContaining("nothing to check");
    Path other = here.resolve("other.db");
    Tampered.with(other, "CREATE TABLE cake (id INTEGER)", "PRAGMA user_version = 3");
    assertThatThrownBy(() -> CheckData.of(other)).hasMessageContaining("not one of Wetside");
  }
}
