package org.wetside.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;

/**
 * A command about the data of one home. While a server works on that home the question goes through
 * it, so that two processes never write; otherwise this process opens the home itself.
 *
 * @param <V> the view record, the same from both
 */
abstract class HomeCommand<V> extends ViewCommand<V> {
  /** The one edge of the command line where the wall clock comes in. */
  static final Clock CLOCK = Clock.system(ZoneId.systemDefault());

  /** The answer when the question needs nothing that a home holds; empty for most commands. */
  Optional<V> answerAnywhere() {
    return Optional.empty();
  }

  /** Asks the use case in this process. */
  abstract V answerHere(Wetside wetside);

  /** The same question to the server. */
  abstract ServerRequest request();

  /** The record that the server's JSON is read into. */
  abstract Class<V> view();

  /** Asks the server; empty when it is gone. */
  Optional<V> answerThere(ServerCall server) {
    return server.ask(request(), view());
  }

  /** Whether the command changes the data; one that only reads may run beside another process. */
  boolean writes() {
    return false;
  }

  @Override
  final V answer() {
    return answerAnywhere().orElseGet(this::answerAtHome);
  }

  private V answerAtHome() {
    Home home = home();
    Optional<ServerAddress> server = ServerAddress.read(home);
    if (server.isPresent()) {
      Optional<V> answer = answerThere(new ServerCall(server.get()));
      if (answer.isPresent()) {
        return answer.get();
      }
    }
    Path folder = home.folder();
    try (Wetside wetside =
        writes() ? Wetside.open(folder, CLOCK) : Wetside.openToRead(folder, CLOCK)) {
      return answerHere(wetside);
    }
  }
}
