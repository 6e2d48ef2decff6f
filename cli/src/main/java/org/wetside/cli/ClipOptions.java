package org.wetside.cli;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import picocli.CommandLine.Option;

/** How a clip of film cleared, with {@code --passed clip} or {@code --failed clip}. */
final class ClipOptions {
  @Option(
      names = "--clearing",
      paramLabel = "TIME",
      description = "until the clip was clear, for example 45s")
  @Nullable String clearing;

  @Option(names = "--film", paramLabel = "FILM", description = "film of the clip")
  @Nullable String film;

  @Option(names = "--at", paramLabel = "TEMPERATURE", description = "of the fixer, for example 20C")
  @Nullable String at;

  @Option(
      names = "--baseline",
      description = "the solution was fresh: later times are compared with it")
  boolean baseline;

  @Nullable Double seconds() {
    if (clearing == null) {
      return null;
    }
    if (at == null) {
      throw new BadValueException(
          "temperature of the fixer", "", "say it with --at, for example 20C");
    }
    return TimeSpan.parse("clearing time", clearing).toMillis() / 1000.0;
  }

  @Nullable Double celsius() {
    return at == null ? null : (Double) Temperature.parse(at).celsius();
  }
}
