package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

class ScreensCommandTest {
  private @TempDir Path home;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void listsAndRemovesWithAndWithoutAServer() {
    assertThat(run("screens")).isZero();
    assertThat(out.toString()).contains("No other screen is let in.");
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC())) {
      letIn(wetside, "phone");
      letIn(wetside, "tablet");
    }
    assertThat(run("screens", "--json")).isZero();
    assertThat(out.toString()).contains("\"name\" : \"phone\"", "\"id\" : 1", "\"seenAt\"");
    assertThat(run("screens", "--remove", "1")).isZero();
    assertThat(out.toString()).contains("2  tablet").doesNotContain("phone");
    assertThat(run("screens", "--remove", "1")).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(err.toString()).contains("none of that number is let in");
    assertThat(run("screens", "--remove", "phone")).isEqualTo(ExitCode.WRONG_INPUT);

    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(wetside.home());
      assertThat(run("screens")).isZero();
      assertThat(out.toString()).contains("2  tablet");
      assertThat(run("screens", "--remove", "2")).isZero();
      assertThat(out.toString()).contains("No other screen is let in.");
      assertThat(wetside.findScreens().all()).isEmpty();
    }
  }

  @Test
  void encryptionGoesWithTheNetwork() {
    assertThat(run("serve", "--tls", "--port", "0")).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(err.toString()).contains("it goes with --lan");
  }

  private static void letIn(Wetside wetside, String name) {
    wetside.pairScreen().pair(wetside.pairScreen().invite().key(), name);
  }

  private int run(String... words) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    String[] all = java.util.Arrays.copyOf(words, words.length + 2);
    all[words.length] = "--home";
    all[words.length + 1] = home.toString();
    return new Main(new PrintWriter(out), new PrintWriter(err)).run(all);
  }
}
