package org.wetside.app.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.HomeInUseException;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;

class RestoreBackupTest {
  private final MovedClock clock = new MovedClock("2026-01-14T20:14:00Z");

  @TempDir Path folder;
  private Home home;
  private Path backup;

  @BeforeEach
  void backUpOneRollThenAddAnother() {
    home = new Home(folder.resolve("home"));
    backup = folder.resolve("one roll.db");
    add("harbour");
    new MakeBackup(home, clock).to(backup, false);
    add("lighthouse");
  }

  private void add(String title) {
    try (Wetside wetside = Wetside.open(home.folder(), clock)) {
      assertThat(wetside.addRolls().lines("135 36 TRI-X 400 @400 \"" + title + "\"").orRefuse())
          .hasSize(1);
    }
  }

  private long rolls(Home in) {
    try (Wetside wetside = Wetside.openToRead(in.folder(), clock)) {
      return wetside.findRolls().in(RollState.WAITING).size();
    }
  }

  @Test
  void whatWasThereIsKeptAsideAndCanBePutBackAgain() {
    assertThat(rolls(home)).isEqualTo(2);
    Restored restored = new RestoreBackup(home, clock).from(backup, true);
    assertThat(rolls(home)).isEqualTo(1);
    assertThat(restored.findings().faults()).isEmpty();
    Path aside = restored.aside().orElseThrow();
    assertThat(aside).isEqualTo(home.backups().resolve("before-restore-2026-01-14T20-14-00Z.db"));
    assertThat(new RestoreBackup(home, clock).from(aside, true).findings().clean()).isTrue();
    assertThat(rolls(home)).isEqualTo(2);
    assertThat(new KeptBackups(home).all()).hasSize(2);
  }

  @Test
  void nothingIsReplacedUnasked() {
    assertThatThrownBy(() -> new RestoreBackup(home, clock).from(backup, false))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("--force");
    assertThatThrownBy(() -> new RestoreBackup(home, clock).from(home.database(), true))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("the data themselves");
    assertThat(rolls(home)).isEqualTo(2);
  }

  @Test
  void aHomeInUseIsLeftAlone() {
    try (Wetside serving = Wetside.open(home.folder(), clock)) {
      assertThatThrownBy(() -> new RestoreBackup(home, clock).from(backup, true))
          .isInstanceOf(HomeInUseException.class);
      assertThat(serving.findRolls().in(RollState.WAITING)).hasSize(2);
    }
  }

  @Test
  void aNewerBackupIsRefused() {
    Tampered.with(backup, "PRAGMA user_version = 999");
    assertThatThrownBy(() -> new RestoreBackup(home, clock).from(backup, true))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("version 999")
        .hasMessageContaining("not changed");
    assertThat(rolls(home)).isEqualTo(2);
    assertThat(home.backups()).doesNotExist();
  }

  @Test
  void anOlderBackupIsBroughtUpToDate() throws IOException {
    Path old = folder.resolve("old.db");
    Tampered.with(old, migration("V1__drawer"));
    Tampered.with(old, "PRAGMA user_version = 1");
    Tampered.with(
        old,
        "INSERT INTO roll (number, format, film, kind, title, precious, added_at, state, note)"
            + " VALUES ('A-1', '135', 'TRI-X 400', 'b/w', 'old', 0, '2025-01-01T00:00:00Z',"
            + " 'waiting', '')");
    byte[] before = Files.readAllBytes(old);
    assertThat(CheckData.of(old).older()).isTrue();
    assertThat(CheckData.of(old).faults()).isEmpty();
    Home other = new Home(folder.resolve("other"));
    Restored restored = new RestoreBackup(other, clock).from(old, false);
    assertThat(restored.version()).isEqualTo(1);
    assertThat(restored.findings().faults()).isEmpty();
    assertThat(rolls(other)).isEqualTo(1);
    assertThat(Files.readAllBytes(old)).as("the backup itself").isEqualTo(before);
  }

  /** Flyway keeps a book of its own in a database it has migrated; a new one has none. */
  private static String[] migration(String name) throws IOException {
    try (var in = RestoreBackupTest.class.getResourceAsStream("/db/migration/" + name + ".sql")) {
      String sql = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
      return sql.replaceAll("--[^\n]*\n", "").split(";\\s*\n");
    }
  }

  @Test
  void aSpoiledBackupIsRefusedAndNothingIsChanged() {
    Tampered.flip(backup, Tampered.page(backup, "roll"), 64);
    assertThatThrownBy(() -> new RestoreBackup(home, clock).from(backup, true))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("damaged");
    assertThat(rolls(home)).isEqualTo(2);
    assertThat(home.folder().toFile().list()).doesNotContain("wetside.db.restored", "backups");
  }

  @Test
  void dataThatAreSpoiledCanBeReplaced() throws IOException {
    Tampered.flip(home.database(), 0, 4000);
    byte[] spoiled = Files.readAllBytes(home.database());
    Restored restored = new RestoreBackup(home, clock).from(backup, true);
    assertThat(rolls(home)).isEqualTo(1);
    assertThat(Files.readAllBytes(restored.aside().orElseThrow())).isEqualTo(spoiled);
  }

  @Test
  void olderDataAreBackedUpBeforeTheyAreMigrated() throws IOException {
    Home other = new Home(folder.resolve("other"));
    other.make();
    Tampered.with(other.database(), migration("V1__drawer"));
    Tampered.with(other.database(), "PRAGMA user_version = 1");
    assertThat(rolls(other)).isZero();
    assertThat(new KeptBackups(other).all())
        .singleElement()
        .satisfies(
            kept -> {
              assertThat(kept.kind()).isEqualTo(KeptBackup.Kind.BEFORE_UPDATE);
              assertThat(CheckData.of(kept.file()).version()).isEqualTo(1);
            });
  }
}
