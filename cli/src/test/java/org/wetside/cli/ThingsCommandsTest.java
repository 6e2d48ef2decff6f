package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

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

/** {@code wetside bottles}, {@code tanks} and {@code thermometers}. All things are invented. */
class ThingsCommandsTest {
  private @TempDir Path home;

  private Typed type(String command) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString()));
    all.addAll(List.of(command.split(" ")));
    return Typed.of(all.toArray(String[]::new));
  }

  private String done(String command) {
    Typed typed = type(command);
    assertThat(typed.exitCode()).as(command + ": " + typed.err()).isZero();
    return typed.out();
  }

  private String refused(String command) {
    Typed typed = type(command);
    assertThat(typed.exitCode()).as(command).isEqualTo(ExitCode.WRONG_INPUT);
    return typed.err();
  }

  /** The same evening by itself and through a server: every line must be the same. */
  private List<String> evening() {
    List<String> said = new ArrayList<>();
    said.add(done("bottles"));
    said.add(
        done(
            "bottles D --add --contents D-76 --bath developer --role stock --holds 2L"
                + " --left 1900mL --one-shot --mixed 2026-01-10"));
    said.add(done("bottles D --take 300mL --note two"));
    said.add(done("bottles D --top-up 100mL"));
    said.add(done("bottles D --correct 1650mL --note spilled"));
    said.add(done("bottles D --open 2026-01-11"));
    said.add(done("bottles D"));
    said.add(done("bottles D --discard --note brown"));
    said.add(refused("bottles D --take 10mL"));
    said.add(done("tanks Double --add --takes 135=2*300mL --takes 120=1*500mL --holds 650mL"));
    said.add(done("tanks Double --change --takes 135=2*300mL --holds 680mL"));
    said.add(done("tanks"));
    said.add(refused("tanks Triple --change --holds 900mL"));
    said.add(done("tanks Double --remove"));
    said.add(done("thermometers rod --add"));
    said.add(done("thermometers rod --shown 0.3C --truth 0C --how ice"));
    said.add(done("thermometers rod"));
    said.add(done("thermometers rod --remove"));
    said.add(refused("thermometers rod"));
    said.add(
        done("tanks Single --add --takes 135=1*300mL --holds 400mL --check Spring --check *Lid"));
    said.add(done("tanks Single --change --check *Bayonet"));
    said.add(done("tanks Single --change --usual-checks"));
    said.add(done("tanks Single --remove"));
    said.add(done("bottles F --add --contents fix --bath fixer --role working --holds 1L"));
    said.add(done("bottles F --passed clip --note 40s"));
    said.add(done("bottles F --failed clip"));
    said.add(done("bottles F --discard"));
    said.add(refused("bottles F --passed smell"));
    return said.stream().map(text -> text.replaceAll("\\d{4}-\\d\\d-\\d\\dT[^ ]+", "AT")).toList();
  }

  @Test
  void anEveningSoundsTheSameAloneAndThroughAServer() {
    List<String> alone = evening();

    assertThat(alone.get(0)).contains("No bottle stands on the shelf");
    assertThat(alone.get(1)).contains("D  D-76, stock  1900 mL of 2000 mL  mixed 2026-01-10");
    assertThat(alone.get(2)).contains("-300 mL  two");
    assertThat(alone.get(4)).contains("1650 mL of 2000 mL", "-50 mL  spilled");
    assertThat(alone.get(5)).contains("opened 2026-01-11");
    assertThat(alone.get(6)).contains("Caution: ");
    assertThat(alone.get(10)).contains("2 × 135, 300 mL each  holds 680 mL");
    assertThat(alone.get(15)).contains("rod  -0.3 K at 0 °C");
    assertThat(alone.get(19)).contains("     Spring", "   * Lid");
    assertThat(alone.get(20)).contains("holds 400 mL", "   * Bayonet").doesNotContain("Spring");
    assertThat(alone.get(21)).contains("     Reel dry and whole", "   * Lid locked");
    assertThat(alone.get(24)).contains("clip test passed  +0 mL  40s");
    assertThat(alone.get(25)).contains("clip test failed");

    try (Wetside wetside = Wetside.open(home, Clock.system(java.time.ZoneId.systemDefault()));
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      List<String> served = evening();
      for (int i = 0; i < alone.size(); i++) {
        if (i != 8 && i != 12 && i != 18 && i != 27) {
          assertThat(served.get(i)).isEqualTo(alone.get(i));
        }
      }
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }

  @Test
  void whatIsMissingOrTooMuchIsSaid() {
    assertThat(refused("bottles --take 300mL")).contains("say its letter");
    assertThat(refused("bottles D --take 1L --top-up 1L")).contains("choose one of");
    assertThat(refused("bottles D --add --contents D-76")).contains("role");
    assertThat(refused("tanks --remove")).contains("say its name");
    assertThat(refused("tanks Double --add --takes 135=two --holds 1L")).contains("135=2*300mL");
    assertThat(refused("tanks Double --add")).contains("volume of the tank");
    assertThat(refused("thermometers rod --add --remove")).contains("choose one of");
    done("thermometers rod --add");
    assertThat(refused("thermometers rod --shown 1C")).contains("what was true");
  }

  @Test
  void theCompletionKnowsEveryCommandAndOption() {
    String script = done("completion");

    assertThat(script).contains("complete -F", "thermometers", "--top-up", "--development");
  }
}
