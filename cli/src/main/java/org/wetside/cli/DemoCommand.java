package org.wetside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.web.Reach;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code wetside demo}: an invented evening in a throw-away home. */
@Command(
    name = "demo",
    description = "Serve an invented evening from a folder that is thrown away afterwards.")
final class DemoCommand implements Callable<Integer> {
  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7373",
      description = "where to listen on 127.0.0.1; 0 takes any free port (default: 7373)")
  String port = "7373";

  @Spec @Nullable CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    if (spec == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    Path folder = Files.createTempDirectory("wetside-demo");
    Clock clock = new SteadyClock(Clock.system(ZoneId.systemDefault()), System::nanoTime);
    spec.commandLine().getOut().println("Living through the invented evenings …");
    spec.commandLine().getOut().flush();
    Wetside wetside = FillDemo.into(new Home(folder), clock);
    return Serving.until(
        wetside, port, Reach.LOOPBACK, spec.commandLine().getOut(), () -> remove(folder));
  }

  private static void remove(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
