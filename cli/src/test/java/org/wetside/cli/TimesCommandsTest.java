package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code wetside time} and {@code wetside times} as they are typed. */
class TimesCommandsTest {
  private @TempDir Path home;
  private List<String> rotary = List.of();

  @BeforeEach
  void question() {
    rotary =
        List.of("time", "T-MAX 400", "D-76", "--dilution=stock", "--ei=400", "--vessel=rotary");
  }

  private Typed type(List<String> words, String... more) {
    List<String> all = new ArrayList<>(words);
    all.addAll(List.of(more));
    all.addAll(List.of("--home", home.toString()));
    return Typed.of(all.toArray(new String[0]));
  }

  private static JsonNode json(Typed typed) {
    assertThat(typed.exitCode()).as(typed.err()).isZero();
    return new JsonMapper().readTree(typed.out());
  }

  /** Row D062, F-32 rotary table (source DV-S01): 7 min at 68 °F. */
  @Test
  void aPrintedTimeIsAnsweredWithItsSource() {
    JsonNode time = json(type(rotary, "--temp=68F", "--json"));
    assertThat(time.get("seconds").asDouble()).isEqualTo(420);
    assertThat(time.get("basis")).hasSize(1);
    assertThat(time.get("basis").get(0).get("source").asString()).isEqualTo("DV-S01");
    assertThat(time.get("basis").get(0).get("standing").asString()).isEqualTo("published");
    assertThat(time.get("bandSeconds")).hasSize(2);
    assertThat(time.get("benchBandSeconds")).hasSize(2);
    assertThat(time.get("warnings").toString()).contains("ormer coating");
  }

  /** Between rows D063 and D064 (source DV-S01). */
  @Test
  void aTemperatureBetweenTwoPrintedOnesNamesBoth() {
    JsonNode time = json(type(rotary, "--temp=71F", "--json"));
    assertThat(time.get("seconds").asDouble()).isBetween(372.0, 378.0);
    JsonNode step = time.get("basis").get(1);
    assertThat(step.get("step").asString()).isEqualTo("temperature");
    assertThat(step.get("printedTemperatures").toString()).contains("70 °F", "72 °F");
  }

  /** Rows E017 and E096 (sources DV-T01, DV-T02). */
  @Test
  void aPushBetweenTwoPrintedIndexesSaysItsSteps() {
    List<String> hand = List.of("time", "TRI-X 400", "D-76", "--dilution=stock", "--temp=20C");
    assertThat(json(type(hand, "--ei=1600", "--vessel=small", "--json")).get("seconds").asDouble())
        .isEqualTo(570);
    Typed text = type(hand, "--ei=800");
    assertThat(text.out()).contains("exposure index", "EI 400", "EI 1600");
  }

  @Test
  void whereThereIsNoHonestTimeTheLimitAndTheHelpAreSaid() {
    Typed none = type(rotary, "--temp=30C");
    assertThat(none.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
    assertThat(none.out()).isEmpty();
    assertThat(none.err()).contains("30 °C", "24 °C", "Clip test", "--add", "Nearest");
  }

  @Test
  void aNameOfSeveralFilmsEndsWithTheList() {
    Typed several = type(List.of("time", "T-MAX", "D-76"), "--temp=20C", "--ei=400");
    assertThat(several.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(several.err()).contains("T-MAX 100", "T-MAX 400", "T-MAX P3200");
  }

  @ParameterizedTest
  @CsvSource({
    "--temp=20, unit",
    "--temp=warm, number and its unit",
    "--ei=fast, 400",
    "--ei=0, more than 0",
    "--dilution=1:1, 1+1",
    "--vessel=bucket, rotary",
    "--format=110, 135",
    "--agitation=wild, semi-stand",
    "--aim=9, 0.58"
  })
  void aBadOptionSaysTheThingAndTheLimit(String option, String says) {
    List<String> asked = new ArrayList<>(List.of("time", "TRI-X 400", "D-76"));
    for (String usual : List.of("--dilution=stock", "--ei=400", "--temp=20C")) {
      if (!option.startsWith(usual.substring(0, usual.indexOf('=')))) {
        asked.add(usual);
      }
    }
    Typed typed = type(asked, option);
    assertThat(typed.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.err()).contains(says);
  }

  /** The times here are invented. */
  @Test
  void timesAreAddedListedGivenOutTakenInAndWithdrawn() throws IOException {
    Typed added =
        type(
            List.of("times", "--add", "TRI-X 400", "D-76", "--dilution=1+1", "--ei=400"),
            "--temp=20C",
            "--minutes=9:45",
            "--vessel=small",
            "--source=leaflet 2024");
    assertThat(added.exitCode()).as(added.err()).isZero();
    assertThat(added.out()).contains("kept 1", "9:45");
    Path file = home.resolve("out.csv");
    assertThat(type(List.of("times", "--export", file.toString())).out()).contains("wrote 1");
    assertThat(Files.readString(file)).contains("TRI-X 400,D-76,1+1,400,20C,9:45,small");
    assertThat(type(List.of("times", "--import", file.toString())).out())
        .contains("kept 0, already on file 1");
    assertThat(type(List.of("times")).out()).contains("own-1", "leaflet 2024");
    assertThat(type(List.of("times", "--withdraw", "own-1")).exitCode()).isZero();
    assertThat(type(List.of("times")).out()).contains("No times of your own");
  }

  @Test
  void aBrokenFileTakesNothingInAndNamesEachBadRow() throws IOException {
    Path file = home.resolve("in.csv");
    Files.writeString(
        file,
        "film,developer,dilution,ei,temp,minutes,vessel,agitation,contrast,source\n"
            + "TRI-X 400,D-76,1+1,400,20C,9:45,small,,,s\n"
            + "TRI-X 400,D-76,1+1,400,20,9:45,small,,,s\n"
            + "TRI-X 400,D-76,1:1,400,20C,9:45,small,,,s\n");
    Typed refused = type(List.of("times", "--import", file.toString()));
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("row 3, temp", "row 4, dilution", "nothing was kept");
    assertThat(type(List.of("times")).out()).contains("No times of your own");
  }

  @Test
  void wishesThatDoNotGoTogetherAreRefused() {
    assertThat(type(List.of("times", "--add", "--withdraw", "own-1")).exitCode())
        .isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type(List.of("times", "TRI-X 400")).exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type(List.of("times", "--add", "TRI-X 400")).exitCode())
        .isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type(List.of("times", "--withdraw", "own-9")).err()).contains("own-9");
    assertThat(type(List.of("times", "--import", home.resolve("none.csv").toString())).exitCode())
        .isEqualTo(ExitCode.NOT_DONE);
  }

  /** While a server works on the home the same words give the same text. */
  @Test
  void throughARunningServerEverythingLooksTheSame() throws IOException {
    String alone = type(rotary, "--temp=71F").out();
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(type(rotary, "--temp=71F").out()).isEqualTo(alone);
      Typed none = type(rotary, "--temp=30C");
      assertThat(none.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
      assertThat(none.err()).contains("Clip test");
      assertThat(type(List.of("times", "--add", "Marsh", "Soup"), "--minutes=9:00").out())
          .contains("kept 1");
      Path file = home.resolve("out.csv");
      assertThat(type(List.of("times", "--export", file.toString())).out()).contains("wrote 1");
      assertThat(type(List.of("times", "--import", file.toString())).out())
          .contains("already on file 1");
      Files.write(file, new byte[] {'f', (byte) 0xE9});
      assertThat(type(List.of("times", "--import", file.toString())).err()).contains("UTF-8");
      assertThat(type(List.of("times", "--withdraw", "own-1")).exitCode()).isZero();
      assertThat(type(List.of("times")).out()).contains("No times of your own");
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }
}
