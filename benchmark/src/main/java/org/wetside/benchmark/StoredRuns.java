package org.wetside.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.stream.Stream;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;

/**
 * A home with many finished runs and one that goes on, lived once and then copied for each
 * measurement, so that none meets what another left.
 *
 * @param home where it is
 * @param finished how many runs are over
 * @param now the moment to go on from
 */
record StoredRuns(Path home, int finished, Instant now) {
  private static final String MARK = "lived";

  /** Lives it now. */
  static StoredRuns live(int finished, Path home) throws IOException {
    Files.createDirectories(home);
    Instant now = ManyEvenings.liveThrough(finished, home);
    Files.writeString(home.resolve(MARK), finished + "\n" + now + "\n");
    return new StoredRuns(home, finished, now);
  }

  /** A copy of one that was lived, in a folder of its own that is to be removed. */
  static StoredRuns copyOf(Path lived) {
    try {
      Path copy = Files.createTempDirectory("wetside-benchmark");
      try (Stream<Path> files = Files.list(lived)) {
        for (Path file : files.toList()) {
          Files.copy(file, copy.resolve(file.getFileName()));
        }
      }
      String[] mark = Files.readString(copy.resolve(MARK)).split("\n", -1);
      return new StoredRuns(copy, Integer.parseInt(mark[0]), Instant.parse(mark[1]));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Opens it as the server does; from here on time goes on as it really does. */
  Wetside open() {
    Clock clock = new SteadyClock(Clock.fixed(now, ZoneOffset.UTC), System::nanoTime);
    Wetside wetside = Wetside.open(home, clock);
    wetside.bench().resume();
    return wetside;
  }

  /** The run that goes on. */
  long running() {
    return finished + 1L;
  }

  /** One that is over, in the middle of all. */
  long over() {
    return Math.max(1, finished / 2);
  }

  void remove() {
    try (Stream<Path> files = Files.walk(home)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
