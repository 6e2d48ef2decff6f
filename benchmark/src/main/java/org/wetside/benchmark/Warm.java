package org.wetside.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Measures what runs warm: {@code benchmark/warm}. Lives a thousand evenings first. */
public final class Warm {
  private static final int STORED_RUNS = 1_000;

  private Warm() {}

  /**
   * Measures.
   *
   * @param arguments patterns of the benchmarks to run; all when there is none
   */
  public static void main(String[] arguments) throws IOException, RunnerException {
    Path lived = Files.createTempDirectory("wetside-thousand-runs");
    StoredRuns runs = StoredRuns.live(STORED_RUNS, lived);
    Path ledger = Files.createTempDirectory("wetside-long-ledger");
    LongLedger.keepIn(ledger);
    try {
      OptionsBuilder options = new OptionsBuilder();
      for (String pattern : arguments) {
        options.include(pattern);
      }
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
      runs.remove();
      new StoredRuns(ledger, 0, Instant.EPOCH).remove();
    }
  }
}
