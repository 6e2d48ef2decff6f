package org.wetside.cli;

import java.io.PrintWriter;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code wetside serve}: the pages, for a browser on this machine, until it is stopped. */
@Command(
    name = "serve",
    description = "Serve the pages of one home to this machine's browser until stopped.")
final class ServeCommand implements Callable<Integer> {
  private static final int TOKEN_BYTES = 24;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7373",
      description = "where to listen on 127.0.0.1; 0 takes any free port (default: 7373)")
  String port = "7373";

  @Spec @Nullable CommandSpec spec;

  @ParentCommand @Nullable Root root;

  @Override
  public Integer call() throws InterruptedException {
    if (spec == null || root == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    return serve(root.home(), spec.commandLine().getOut());
  }

  private int serve(Home home, PrintWriter out) throws InterruptedException {
    int wanted = portOf(port);
    // The wall clock enters here and is handed inwards.
    Clock clock = new SteadyClock(Clock.systemDefaultZone(), System::nanoTime);
    Wetside wetside = Wetside.open(home.folder(), clock);
    CountDownLatch stopped = new CountDownLatch(1);
    try {
      String token = freshToken();
      WebServer server =
          WebServer.start(wetside, new WebOptions(wanted, home.isDemo(), Optional.of(token)));
      Runtime.getRuntime()
          .addShutdownHook(
              new Thread(
                  () -> {
                    server.close();
                    ServerAddress.remove(home);
                    wetside.close();
                    stopped.countDown();
                  },
                  "stop"));
      wetside.bench().resume();
      String address = "http://127.0.0.1:" + server.port();
      wetside.servingAt(address);
      new ServerAddress(address, token).write(home);
      out.println("Wetside is at " + server.address());
      out.println("Data: " + home.folder());
      out.println("Ctrl-C stops it; a run that is under way goes on by the clock.");
      out.flush();
    } catch (RuntimeException e) {
      wetside.close();
      throw e;
    }
    stopped.await();
    return ExitCode.DONE;
  }

  private static int portOf(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new BadValueException("port", text, "a whole number from 0 (any free one) to 65535");
    }
  }

  private static String freshToken() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }
}
