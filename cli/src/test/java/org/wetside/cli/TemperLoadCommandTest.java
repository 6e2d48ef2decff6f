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
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Volume;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** {@code wetside waters} and {@code wetside temper --load}. All things are invented. */
class TemperLoadCommandTest {
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
    type("loads", "--make", "A-1,A-2", "--tank", "Double", "--developer", "D-76", "--temp", "20C");
  }

  private Typed type(String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString()));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  private List<String> evening() {
    List<String> said = new ArrayList<>();
    said.add(type("temper", "--load", "1").err());
    said.add(type("waters", "cold tap", "--usual", "9C", "--hardness", "hard").out());
    said.add(type("waters", "boiler", "--usual", "60C").out());
    said.add(type("waters", "boiler", "--hardness", "soft").err());
    said.add(type("temper", "--load", "1", "--room", "16C").out());
    said.add(type("temper", "--load", "1", "--tau", "45min", "--json").out());
    said.add(type("temper", "--load", "9").err());
    said.add(type("waters", "boiler", "--remove").out());
    said.add(type("waters", "cold tap", "--remove").out());
    return said;
  }

  @Test
  void aloneAndThroughAServerTheSameIsSaid() {
    List<String> alone = evening();
    assertThat(alone.get(0)).contains("waters at hand");
    assertThat(alone.get(2)).contains("cold tap  9 °C, hard", "boiler  60 °C");
    assertThat(alone.get(4)).contains("1. ", "Developer", "cold tap at 9 °C", "scalds");
    assertThat(alone.get(5)).contains("\"atPourC\" :");
    assertThat(alone.get(6)).contains("9");
    assertThat(alone.get(8)).contains("No water is written down");
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      List<String> through = evening();
      assertThat(through.subList(1, 6)).isEqualTo(alone.subList(1, 6));
      assertThat(through.get(0)).isEqualTo(alone.get(0));
      assertThat(through.get(8)).isEqualTo(alone.get(8));
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    assertThat(type("temper", "--load", "1", "--to", "20C").err()).contains("--to");
    assertThat(type("temper", "--to", "20C", "--total", "1L", "--cold", "9C", "--room=9C").err())
        .contains("only with --load");
    assertThat(type("temper", "--load", "one").err()).contains("a whole number");
    assertThat(type("waters", "--usual", "9C").err()).contains("say its name");
    assertThat(type("waters", "moat", "--usual", "130C").err()).contains("between 0 and 100 °C");
    assertThat(type("waters", "moat", "--remove").err()).contains("there is none of that name");
  }
}
