package org.wetside.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
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
  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7373",
      description = "where to listen on 127.0.0.1; 0 takes any free port (default: 7373)")
  String port = "7373";

  @Spec @Nullable CommandSpec spec;

  @ParentCommand @Nullable Root root;

  @Override
  public Integer call() {
    if (spec == null || root == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    // The wall clock enters here and is handed inwards.
    Clock clock = new SteadyClock(Clock.system(ZoneId.systemDefault()), System::nanoTime);
    Wetside wetside = Wetside.open(root.home().folder(), clock);
    return Serving.until(wetside, port, spec.commandLine().getOut(), () -> {});
  }
}
