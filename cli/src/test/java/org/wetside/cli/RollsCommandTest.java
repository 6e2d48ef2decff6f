package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** {@code wetside rolls} as it is typed, alone and through a server. Every roll is invented. */
class RollsCommandTest {
  private @TempDir Path home;

  private Typed type(String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString(), "rolls"));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  @Test
  void addsListsFindsAndShows() {
    assertThat(type().out()).contains("No roll yet");
    Typed added = type("--add", "TM-05 135 36 TRI-X 400 @800 \"harbour\"");
    assertThat(added.exitCode()).as(added.err()).isZero();
    assertThat(type("--add", "120 T-MAX").out()).contains("TM-06", "which film?");
    assertThat(type("--find", "harb").out()).contains("TM-05  waiting  135 36  TRI-X 400 @800");
    assertThat(type("--state", "filed").out()).contains("No roll is like that");
    assertThat(type("--show", "tm-05", "--json").out())
        .containsPattern("\"runs\"\\s*:\\s*\\[\\s*\\]");
    assertThat(type("--show", "TM-99").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type("--show", "TM-05", "--find", "x").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void aFileIsTakenWholeOrNamedLineByLine() throws IOException {
    Path file = home.resolve("rolls.txt");
    Files.writeString(file, "# January\n135 TRI-X 400\n136 TRI-X 400\n");
    Typed refused = type("--add-file", file.toString());
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("line 3", "none was put");
    assertThat(type().out()).contains("No roll yet");
    assertThat(type("--add-file", home.resolve("none").toString()).exitCode())
        .isEqualTo(ExitCode.NOT_DONE);
    Files.write(file, new byte[] {'1', (byte) 0xE9});
    assertThat(type("--add-file", file.toString()).err()).contains("UTF-8");
  }

  @Test
  void throughARunningServerEverythingLooksTheSame() throws IOException {
    type("--add", "TM-05 135 36 TRI-X 400 @800 \"Größe\"");
    String alone = type("--show", "TM-05").out();
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(type("--show", "TM-05").out()).isEqualTo(alone);
      assertThat(type("--add", "120 TRI-X 400 \"Größe\"").out()).contains("TM-06", "Größe");
      Typed refused = type("--add", "136 TRI-X 400");
      assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(refused.err()).contains("136", "135, 120");
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }
}
