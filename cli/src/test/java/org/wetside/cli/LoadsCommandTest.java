package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.RollState;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Volume;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * {@code wetside loads} as it is typed, alone and through a server. Rolls and tanks are invented.
 */
class LoadsCommandTest {
  private static final String[] MAKE = {
    "--make", "A-1,A-2", "--tank", "Double", "--developer", "D-76", "--temp", "68F"
  };

  private @TempDir Path home;

  @BeforeEach
  void fill() {
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC())) {
      wetside
          .keepTanks()
          .add(
              new Tank(
                  "Double",
                  Vessel.SMALL_TANK,
                  List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                  Volume.ofMillilitres(650)));
      wetside.addRolls().lines("A-1 135 36 TRI-X 400 @400\nA-2 135 36 TRI-X 400 @400");
    }
  }

  private Typed type(String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString(), "loads"));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  /** Row E017, source DV-T01: TRI-X 400 in D-76 stock, small tank, 68 °F: 6 3/4 minutes. */
  @Test
  void makesShowsAndTakesApart() {
    assertThat(type().out()).contains("No load is planned");

    Typed made = type(MAKE);

    assertThat(made.exitCode()).as(made.err()).isZero();
    assertThat(made.out()).contains("1  planned  A-1, A-2 in Double", "6:45 (published, DV-T01");
    assertThat(type("--show", "1", "--json").out())
        .containsPattern("\"seconds\"\\s*:\\s*405.0")
        .containsPattern("\"volumeMl\"\\s*:\\s*600.0");
    assertThat(type("--dissolve", "1").out()).contains("dissolved");
    try (Wetside wetside = Wetside.openToRead(home, Clock.systemUTC())) {
      assertThat(wetside.findRolls().byNumber("A-1").orElseThrow().state())
          .isEqualTo(RollState.WAITING);
    }
  }

  @Test
  void whatCannotBeSaysWhyAndMakesNothing() {
    Typed unknown =
        type("--make", "A-9", "--tank", "Double", "--developer", "D-76", "--temp", "68F");
    assertThat(unknown.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(unknown.err()).contains("A-9");
    Typed hot = type("--make", "A-1", "--tank", "Double", "--developer", "D-76", "--temp", "80C");
    assertThat(hot.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(hot.err()).contains("developer temperature", "80", "between 5 and 60 °C");
    assertThat(type("--make", "A-1").err()).contains("tank");
    assertThat(type("--show", "one").err()).contains("a whole number");
    assertThat(type("--show", "4").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type().out()).contains("No load is planned");
  }

  @Test
  void throughARunningServerEverythingLooksTheSame() {
    type(MAKE);
    String alone = type("--show", "1").out();
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(type("--show", "1").out()).isEqualTo(alone);
      assertThat(type("--dissolve", "1").out()).contains("dissolved");
      assertThat(type(MAKE).out()).contains("2  planned");
      Typed twice = type(MAKE);
      assertThat(twice.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(twice.err()).contains("A-1", "loaded already");
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }
}
