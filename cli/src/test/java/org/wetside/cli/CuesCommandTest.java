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
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Volume;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code wetside cues} as it is typed, alone and through a server. Roll and tank are invented. */
class CuesCommandTest {
  private @TempDir Path home;

  private Typed type(String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString(), "cues"));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  private JsonNode cues(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    Typed typed = type(all.toArray(String[]::new));
    assertThat(typed.exitCode()).as(typed.err()).isZero();
    return new JsonMapper().readTree(typed.out());
  }

  /** Pour-in 10 s and drain lead 15 s, common practice (DV-S12). */
  @Test
  void theDevelopersDrainIsAtItsSecondAndNoCycleRunsIntoIt() {
    double cycleSeconds = 5;
    List<JsonNode> drains = new ArrayList<>();
    List<Double> cycles = new ArrayList<>();
    for (JsonNode cue : cues("small-tank", "--development", "9:00").get("cues")) {
      assertThat(cue.propertyNames())
          .contains("atSeconds", "stepSeconds", "step", "act", "text", "speech", "tone", "signal");
      if (cue.get("step").asInt() == 0 && cue.get("act").asString().equals("drain")) {
        drains.add(cue);
      }
      if (cue.get("step").asInt() == 0 && cue.get("act").asString().equals("agitate")) {
        cycles.add(cue.get("stepSeconds").asDouble());
      }
    }
    assertThat(drains)
        .singleElement()
        .satisfies(drain -> assertThat(drain.get("stepSeconds").asDouble()).isEqualTo(525.0))
        .satisfies(drain -> assertThat(drain.get("atSeconds").asDouble()).isEqualTo(535.0));
    // full at 0, then each minute; the one at 540 s would be in the drain
    assertThat(cycles).containsExactly(0.0, 60.0, 120.0, 180.0, 240.0, 300.0, 360.0, 420.0, 480.0);
    assertThat(cycles).allMatch(start -> start + cycleSeconds <= 525.0);
  }

  @Test
  void asTextTheyStandByTheClock() {
    assertThat(type("small-tank", "--development", "9:00").out())
        .containsPattern("(?m)^ +8:55  .*[Dd]rain");
  }

  /** Row E017, source DV-T01: TRI-X 400 in D-76 stock, small tank, 68 °F: 6 3/4 minutes. */
  @Test
  void aLoadIsAskedForByItsNumberAloneAndThroughAServer() {
    makeLoad();
    JsonNode own = cues("1");
    assertThat(seconds(own)).isEqualTo(seconds(cues("small-tank", "--development", "6:45")));
    assertThat(own.get("cues").get(0).get("speech").asString()).startsWith("Double: ");
    JsonNode longer = cues("1", "--development", "9:00");
    assertThat(longer.get("totalSeconds").asDouble() - own.get("totalSeconds").asDouble())
        .isEqualTo(135);
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(cues("1")).isEqualTo(own);
      assertThat(cues("1", "--development", "9:00")).isEqualTo(longer);
      assertRefused("no such load", "2");
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }

  @Test
  void aTrackIsWrittenAloneAndThroughAServer(@TempDir Path folder) throws IOException {
    for (String ending : List.of("opus", "wav")) {
      Path alone = folder.resolve("alone." + ending);
      Path served = folder.resolve("served." + ending);
      Typed typed = type("small-tank", "--development", "9:00", "--track", alone.toString());
      assertThat(typed.exitCode()).as(typed.err()).isZero();
      assertThat(typed.out()).contains(alone.toString()).contains("the first pour at 0:32");
      try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
          WebServer server =
              WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
        new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
        typed = type("small-tank", "--development", "9:00", "--track", served.toString());
        assertThat(typed.exitCode()).as(typed.err()).isZero();
      } finally {
        ServerAddress.remove(new Home(home));
      }
      assertThat(served).hasSameBinaryContentAs(alone);
    }
  }

  @Test
  void aTrackReplacesNothingUnasked(@TempDir Path folder) throws IOException {
    Path there = Files.writeString(folder.resolve("a.opus"), "precious");
    assertRefused("--force", "small-tank", "--development", "9:00", "--track", there.toString());
    assertThat(there).hasContent("precious");
    assertRefused(".opus or .wav", "small-tank", "--development", "9:00", "--track", "a.mp3");
    Path inTheWay = Files.createDirectory(folder.resolve("b.wav"));
    assertRefused(
        "not a folder", "small-tank", "--development", "9:00", "--track", inTheWay.toString());
    String force = there.toString();
    Typed typed = type("small-tank", "--development", "0:45", "--track", force, "--force");
    assertThat(typed.exitCode()).as(typed.err()).isZero();
    assertThat(Files.size(there)).isGreaterThan(1000);
  }

  private static List<Double> seconds(JsonNode view) {
    List<Double> seconds = new ArrayList<>();
    view.get("cues").forEach(cue -> seconds.add(cue.get("atSeconds").asDouble()));
    return seconds;
  }

  @Test
  void whatCannotBeMeantIsRefused() {
    assertRefused("at most 9 digits", "1234567890");
    assertRefused("no such load", "123456789");
    assertRefused("developer time", "small-tank");
    assertRefused("must be one of", "nowhere", "--development", "9:00");
    assertRefused("unit", "small-tank", "--development", "9");
  }

  private void assertRefused(String says, String... words) {
    Typed typed = type(words);
    assertThat(typed.exitCode()).as(typed.out()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.err()).contains(says);
  }

  private void makeLoad() {
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC())) {
      Tank.Room room = new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300));
      wetside
          .keepTanks()
          .add(new Tank("Double", Vessel.SMALL_TANK, List.of(room), Volume.ofMillilitres(650)));
      wetside.addRolls().lines("A-1 135 36 TRI-X 400 @400");
    }
    Typed made =
        Typed.of(
            "--home",
            home.toString(),
            "loads",
            "--make",
            "A-1",
            "--tank",
            "Double",
            "--developer",
            "D-76",
            "--temp",
            "68F");
    assertThat(made.exitCode()).as(made.err()).isZero();
  }
}
