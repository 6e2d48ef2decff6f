package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** {@code wetside judge} and {@code wetside learned}, on the rolls of the invented evenings. */
class LearningCommandsTest {
  private static final Clock CLOCK = Clock.system(ZoneId.systemDefault());

  private @TempDir Path home;

  private Typed type(String... command) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString()));
    all.addAll(List.of(command));
    return Typed.of(all.toArray(String[]::new));
  }

  private String done(String... command) {
    Typed typed = type(command);
    assertThat(typed.exitCode()).as(String.join(" ", command) + ": " + typed.err()).isZero();
    return typed.out();
  }

  /** The invented evenings, without what was judged in them. */
  private void fill() {
    FillDemo.into(new Home(home), CLOCK).close();
    assertThat(done("judge", "TM-01", "--take-back")).contains("taken back");
    assertThat(done("judge", "TM-02", "--take-back")).contains("taken back");
  }

  private List<String> evening() {
    return List.of(
        done("learned"),
        done(
            "judge",
            "TM-01",
            "--edge",
            "as usual",
            "--shadows",
            "weak",
            "--contrast",
            "flat",
            "--water",
            "tap"),
        done("judge", "TM-03", "--clear", "0.28", "--dark", "0.36", "--light", "1.40"),
        done("learned"),
        done("learned", "--accept", "TRI-X 400", "D-76"),
        done("time", "TRI-X 400", "D-76", "--dilution", "1+1", "--ei", "400", "--temp", "20C"),
        done("learned", "--undo", "TRI-X 400", "D-76"),
        done("judge", "TM-02", "--edge", "as usual", "--contrast", "flat", "--water", "well"),
        done("learned", "--accept", "--index", "TRI-X 400", "D-76"),
        done("learned", "--undo", "--index", "TRI-X 400", "D-76"),
        done("judge", "TM-02", "--take-back"),
        done("judge", "TM-01", "--take-back"),
        done("judge", "TM-03", "--take-back"));
  }

  @Test
  void judgingSoundsTheSameAloneAndThroughAServer() {
    fill();
    List<String> alone = evening();

    assertThat(alone.get(0)).contains("Nothing is learned yet");
    assertThat(alone.get(1))
        .contains("judged: TM-01, TRI-X 400 in D-76", "time: +", "from the word flat")
        .contains("index: -0.5 stops", "is a judgement");
    assertThat(alone.get(2)).contains("from the reference pair, contrast index");
    assertThat(alone.get(3)).contains("yours: +", "from 1 roll; use it?", "index: ", "off by");
    assertThat(alone.get(4)).contains("yours, in use: +");
    assertThat(alone.get(5)).contains("your own factor: learned from 1 roll", "yours, in use");
    assertThat(alone.get(6)).contains("use it?").doesNotContain("in use");
    assertThat(alone.get(8)).contains("(changed: water: well)");
    assertThat(alone.get(8)).contains("your index, in use: ").doesNotContain("yours, in use");
    assertThat(alone.get(9)).contains("your index: ", "judgement").doesNotContain("in use: ");
    assertThat(alone.get(11)).contains("taken back: TM-01");

    try (Wetside wetside = Wetside.open(home, CLOCK);
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(home));
      assertThat(evening()).isEqualTo(alone);
    } finally {
      ServerAddress.remove(new Home(home));
    }
  }

  @Test
  void whatIsWrongIsSaid() {
    fill();

    assertThat(type("judge", "TM-03", "--clear", "0,28").err()).contains("with a point");
    assertThat(type("judge", "TM-03", "--contrast", "mushy").exitCode())
        .isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type("judge", "TM-01", "--take-back", "--contrast", "flat").err())
        .contains("stands alone");
    assertThat(type("learned", "--accept", "TRI-X 400").err()).contains("write film and developer");
    assertThat(type("learned", "--accept", "TRI-X 400", "D-76").err())
        .contains("no roll was judged yet");
  }
}
