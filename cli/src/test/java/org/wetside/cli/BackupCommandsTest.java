package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** Backup, restore and check as they are typed: what they say and how they end. */
class BackupCommandsTest {
  @TempDir Path folder;
  private Path home;
  private Path file;

  @BeforeEach
  void putARollIn() {
    home = folder.resolve("home");
    file = folder.resolve("kept.db");
    assertThat(type("rolls", "--add", "135 36 TRI-X 400 @400 \"harbour\"").exitCode()).isZero();
  }

  private Typed type(String... words) {
    String[] all = new String[words.length + 2];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = "--home";
    all[words.length + 1] = home.toString();
    return Typed.of(all);
  }

  private Typed backup(Path to) {
    return type("backup", to.toString());
  }

  @Test
  void backedUpRestoredAndChecked() {
    Typed made = backup(file);
    assertThat(made.exitCode()).as(made.err()).isZero();
    assertThat(made.out()).contains(file + ": all data of this moment");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("home", "kept.db");

    assertThat(type("check", file.toString()).out()).contains("Nothing is wrong: file, 0 runs");
    assertThat(type("check", "--json").out())
        .contains("\"clean\" : true", "\"rolls\" : 1", "\"faults\" : [ ]");

    Typed unasked = type("restore", file.toString());
    assertThat(unasked.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(unasked.err()).contains("--force keeps them aside");

    Typed restored = type("restore", file.toString(), "--force", "--json");
    assertThat(restored.exitCode()).as(restored.err()).isZero();
    assertThat(restored.out())
        .contains("\"aside\" : \"" + home.resolve("backups").resolve("before-restore-"))
        .contains("\"clean\" : true");
    assertThat(type("rolls").out()).contains("harbour");
  }

  @Test
  void aFileIsNotReplacedUnasked() throws IOException {
    Files.writeString(file, "letters");
    Typed refused = backup(file);
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("--force replaces it");
    assertThat(file).hasContent("letters");
    assertThat(type("backup", file.toString(), "--force").exitCode()).isZero();
    assertThat(type("check", file.toString()).exitCode()).isZero();
    assertThat(backup(folder).err()).contains("a file, not a folder");
    Path data = home.resolve("wetside.db");
    assertThat(type("backup", data.toString(), "--force").exitCode())
        .isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void whereNothingCanBeWrittenThatIsSaid() throws IOException {
    Typed nowhere = backup(folder.resolve("no").resolve("such.db"));
    assertThat(nowhere.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(nowhere.err()).contains("there is no folder " + folder.resolve("no"));

    Path notAFolder = Files.writeString(folder.resolve("letter.txt"), "dear");
    Typed wrong = backup(notAFolder.resolve("kept.db"));
    assertThat(wrong.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(wrong.err()).contains("there is no folder " + notAFolder);

    Typed empty = Typed.of("backup", file.toString(), "--home", folder.resolve("new").toString());
    assertThat(empty.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(empty.err()).contains("has no data yet");
    assertThat(file).doesNotExist();
  }

  /** A process that may write no file longer than 3 MB stands for a disk that takes no more. */
  @Test
  void aDiskThatTakesNoMoreLeavesNothingBehind() throws IOException, InterruptedException {
    change(
        home.resolve("wetside.db"),
        "INSERT INTO setting VALUES ('large', hex(randomblob(2000000)))");
    String command =
        "ulimit -f 3000; exec '"
            + Path.of(System.getProperty("java.home"), "bin", "java")
            + "' -XX:-UsePerfData -cp '"
            + System.getProperty("java.class.path")
            + "' org.wetside.cli.Main backup '"
            + file
            + "' --home '"
            + home
            + "'";
    Process process = new ProcessBuilder("bash", "-c", command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said).isEqualTo(ExitCode.NOT_DONE);
    assertThat(said)
        .contains("writing " + file + ": ")
        .containsAnyOf("the disk could not", "the disk is full")
        .doesNotContain("\tat ");
    assertThat(folder.toFile().list()).containsExactly("home");
  }

  @Test
  void aSpoiledOrStrangeOrNewerFileIsRefused() throws IOException {
    assertThat(backup(file).exitCode()).isZero();
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.seek(pageOfRolls(file));
      bytes.write(new byte[] {(byte) 0xff, (byte) 0xee, 0, 1, 2, 3, 4, 5});
    }
    Typed checked = type("check", file.toString());
    assertThat(checked.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(checked.out()).contains("file: ", " faults in: file");
    Typed restored = type("restore", file.toString(), "--force");
    assertThat(restored.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(restored.err()).contains("damaged", "were not changed");

    Files.writeString(file, "not a database at all, but long enough to have a header of its own");
    assertThat(type("check", file.toString()).err()).contains("not a database");
    assertThat(type("restore", file.toString(), "--force").exitCode()).isEqualTo(3);

    assertThat(type("backup", file.toString(), "--force").exitCode()).isZero();
    change(file, "PRAGMA user_version = 999");
    Typed newer = type("restore", file.toString(), "--force");
    assertThat(newer.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(newer.err()).contains("version 999");
    assertThat(type("rolls").out()).contains("harbour");
  }

  @Test
  void eachFaultIsSaidAndTheEndIsThree() {
    change(home.resolve("wetside.db"), "UPDATE roll SET state = 'loaded'");
    Typed checked = type("check", "--json");
    assertThat(checked.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(checked.out()).contains("\"clean\" : false", "\"where\" : \"roll ");
  }

  private static long pageOfRolls(Path database) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
        Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery("SELECT rootpage FROM sqlite_schema WHERE name = 'roll'")) {
      return (row.getLong(1) - 1) * 4096;
    } catch (SQLException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static void change(Path database, String sql) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Test
  void besideARunningServerEverythingButRestoreIsDone() {
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(wetside.home());
      assertThat(wetside.addRolls().lines("135 36 TRI-X 400 @400 \"pier\"").orRefuse()).hasSize(1);
      assertThat(backup(file).exitCode()).isZero();
      assertThat(type("check", file.toString(), "--json").out()).contains("\"rolls\" : 2");
      assertThat(type("check").exitCode()).isZero();
      Typed refused = type("restore", file.toString(), "--force");
      assertThat(refused.exitCode()).isEqualTo(ExitCode.NOT_DONE);
      assertThat(refused.err()).contains("is in use by process");
    }
  }
}
