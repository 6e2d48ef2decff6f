package org.wetside.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Reach;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code wetside serve}: the pages, for this machine and paired screens, until it is stopped. */
@Command(name = "serve", description = "Serve the pages of one home to a browser until stopped.")
final class ServeCommand implements Callable<Integer> {
  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7373",
      description = "where to listen; 0 takes any free port (default: 7373)")
  String port = "7373";

  @Option(names = "--lan", description = "let paired screens on the same network in")
  boolean lan;

  @Option(
      names = "--tls",
      description =
          "with --lan: encrypt what goes to them, on the next port, under a certificate each"
              + " screen is told to trust once")
  boolean tls;

  @Spec @Nullable CommandSpec spec;

  @ParentCommand @Nullable Root root;

  @Override
  public Integer call() {
    if (spec == null || root == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    Reach reach = reach();
    // The wall clock enters here and is handed inwards.
    Clock clock = new SteadyClock(Clock.system(ZoneId.systemDefault()), System::nanoTime);
    Wetside wetside = Wetside.open(root.home().folder(), clock);
    return Serving.until(wetside, port, reach, spec.commandLine().getOut(), () -> {});
  }

  private Reach reach() {
    if (tls && !lan) {
      throw new BadValueException("--tls", "alone", "it goes with --lan");
    }
    return tls ? Reach.LAN_TLS : lan ? Reach.LAN : Reach.LOOPBACK;
  }
}
