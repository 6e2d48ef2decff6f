package org.wetside.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Measures what runs warm: {@code benchmark/warm}. Lives a thousand evenings first, and makes a
 * long ledger, where they are asked for.
 */
public final class Warm {
  private static final int STORED_RUNS = 1_000;

  private Warm() {}

  /**
   * Measures.
   *
   * @param arguments patterns of the benchmarks to run; all when there is none
   */
  public static void main(String[] arguments) throws IOException, RunnerException {
    List<String> patterns = List.of(arguments);
    Path lived = Files.createTempDirectory("wetside-thousand-runs");
    if (asked(patterns, SnapshotBenchmark.class)) {
      StoredRuns.live(STORED_RUNS, lived);
    }
    Path ledger = Files.createTempDirectory("wetside-long-ledger");
    if (asked(patterns, LedgerBenchmark.class)) {
      LongLedger.keepIn(ledger, LongLedger.LINES);
    }
    try {
      OptionsBuilder options = new OptionsBuilder();
      patterns.forEach(options::include);
      options
          .forks(1)
          .warmupIterations(3)
          .warmupTime(TimeValue.seconds(2))
          .measurementIterations(5)
          .measurementTime(TimeValue.seconds(1))
          .jvmArgsAppend(
              "-D" + SnapshotBenchmark.HOME + "=" + lived,
              "-D" + LedgerBenchmark.HOME + "=" + ledger,
              "-XX:+UseSerialGC");
      new Runner(options.build()).run();
    } finally {
      new StoredRuns(lived, 0, Instant.EPOCH).remove();
      new StoredRuns(ledger, 0, Instant.EPOCH).remove();
    }
  }

  /** Whether one of its methods may be asked for, as JMH reads the patterns. */
  private static boolean asked(List<String> patterns, Class<?> benchmark) {
    return patterns.isEmpty()
        || Arrays.stream(benchmark.getDeclaredMethods())
            .map(method -> benchmark.getName() + "." + method.getName())
            .anyMatch(
                name ->
                    patterns.stream().anyMatch(one -> Pattern.compile(one).matcher(name).find()));
  }
}
