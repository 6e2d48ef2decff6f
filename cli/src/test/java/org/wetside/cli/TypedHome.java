package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Commands typed at one home.
 *
 * @param folder of the home
 */
record TypedHome(Path folder) {
  /** Types {@code wetside --home FOLDER} and these words. */
  Typed type(String... words) {
    return Typed.of(
        Stream.concat(Stream.of("--home", folder.toString()), Stream.of(words))
            .toArray(String[]::new));
  }

  /** What a command prints that must succeed. */
  String done(String... words) {
    Typed typed = type(words);
    assertThat(typed.exitCode()).as(String.join(" ", words) + ": " + typed.err()).isZero();
    return typed.out();
  }

  /** The JSON of a command that must succeed. */
  JsonNode json(String... words) {
    String[] asked = Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new);
    return JsonMapper.shared().readTree(done(asked));
  }

  /** What a command says that must be refused as wrong input. */
  String refused(String... words) {
    Typed typed = type(words);
    assertThat(typed.exitCode()).as(String.join(" ", words)).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.out()).isEmpty();
    return typed.err();
  }

  /** Fills the home in this process, by its use cases. */
  void fill(Consumer<Wetside> filling) {
    try (Wetside wetside = Wetside.open(folder, Clock.system(ZoneId.systemDefault()))) {
      filling.accept(wetside);
    }
  }

  /** The same while a server works on the home, so that every command goes through it. */
  <T> T served(Supplier<T> typing) {
    try (Wetside wetside = Wetside.open(folder, Clock.system(ZoneId.systemDefault()));
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(folder));
      return typing.get();
    } finally {
      ServerAddress.remove(new Home(folder));
    }
  }
}
