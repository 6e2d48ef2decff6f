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

/** {@code wetside processes} and {@code wetside cues} as they are typed. */
class ProcessesCommandTest {
  private @TempDir Path home;

  private Typed type(String command, String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString(), command));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  @Test
  void listsShowsCopiesAndTakesAway() {
    assertThat(type("processes").out()).contains("small-tank  Small tank");
    assertThat(type("processes", "--show", "small-tank").out())
        .containsPattern("the load's  developer D  .*published")
        .contains("18.3 to 23.9 °C; drained 15.0 s before its end; back to F")
        .contains("23.9 °C; drained 15.0 s before its end; discarded");
    Typed copied = type("processes", "--copy", "small-tank", "--as", "harbour-tank");
    assertThat(copied.exitCode()).as(copied.err()).isZero();
    assertThat(copied.out()).contains("harbour-tank  Harbour tank  (your own)");
    assertThat(type("processes", "--remove", "harbour-tank").exitCode()).isZero();
    assertThat(type("processes").out()).doesNotContain("harbour-tank");
  }

  @Test
  void aTextIsWrittenReadAndTakenInAgain() throws IOException {
    Path file = home.resolve("mine.txt");
    String text = type("processes", "--text", "small-tank").out();
    Files.writeString(
        file,
        text.replace("process: small-tank", "process: mine")
            .replace("name: Small tank", "name: Mine"));
    assertThat(type("processes", "--add", file.toString()).out()).contains("mine  Mine");
    Files.writeString(file, Files.readString(file).replace("time: 5:00", "time: 6:30"));
    assertThat(type("processes", "--change", file.toString()).out()).contains("6:30  fixer F");
    Files.writeString(file, Files.readString(file).replace("time: 6:30", "time: long"));
    Typed refused = type("processes", "--change", file.toString());
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("time", "long");
    assertThat(type("processes", "--show", "mine").out()).contains("6:30  fixer F");
  }

  @Test
  void whatCannotBeSaysWhy() {
    assertThat(type("processes", "--show", "nothing").err()).contains("nothing", "small-tank");
    assertThat(type("processes", "--remove", "small-tank").err()).contains("built in");
    assertThat(type("processes", "--copy", "small-tank").err()).contains("--as");
    assertThat(type("processes", "--as", "mine").err()).contains("--copy");
    assertThat(type("processes", "--show", "a", "--text", "b").exitCode())
        .isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type("processes", "--add", home.resolve("none").toString()).exitCode())
        .isEqualTo(ExitCode.NOT_DONE);
  }

  @Test
  void throughARunningServerEverythingLooksTheSame() throws IOException {
    String alone = type("processes", "--show", "small-tank").out();
    String text = type("processes", "--text", "small-tank").out();
    String cues = type("cues", "small-tank", "--development", "9:00").out();
    Path file = home.resolve("mine.txt");
    Files.writeString(
        file,
        text.replace("process: small-tank", "process: mine")
            .replace("name: Small tank", "name: Mine"));
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(type("processes", "--show", "small-tank").out()).isEqualTo(alone);
      assertThat(type("processes", "--text", "small-tank").out()).isEqualTo(text);
      assertThat(type("cues", "small-tank", "--development", "9:00").out()).isEqualTo(cues);
      assertThat(type("processes", "--copy", "rotary", "--as", "drum").out()).contains("drum");
      assertThat(type("processes", "--add", file.toString()).out()).contains("mine  Mine");
      assertThat(type("processes", "--change", file.toString()).exitCode()).isZero();
      assertThat(type("processes", "--remove", "drum").exitCode()).isZero();
      assertThat(type("processes", "--remove", "drum").err()).contains("drum");
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }

  /** 9:00 less a drain of 15 s, after a pour of 10 s (common practice): 525 s, at 535 s. */
  @Test
  void theDeveloperIsDrainedFifteenSecondsBeforeItsEnd() {
    String json = type("cues", "small-tank", "--development", "9:00", "--json").out();
    assertThat(json)
        .containsPattern(
            "\"atSeconds\"\\s*:\\s*535.0,\\s*\"stepSeconds\"\\s*:\\s*525.0,\\s*\"step\"\\s*:\\s*0,"
                + "\\s*\"bath\"\\s*:\\s*\"developer\",\\s*\"act\"\\s*:\\s*\"drain\"");
    assertThat(type("cues", "small-tank").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type("cues", "12345678901").err()).contains("at most 9 digits");
    assertThat(type("cues", "4").err()).contains("load", "4", "there is no such load");
  }
}
