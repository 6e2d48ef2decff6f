package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Runs what people run, so that the Java machine can write down which classes that takes (a
 * class-data archive). Called by the build on the packaged program, never by people.
 */
public final class Training {
  /** Stands for a file with readings of a thermometer. */
  private static final String READINGS = "READINGS";

  /** Stand for files with the steps of a curve and with contrast against time. */
  private static final String STEPS = "STEPS";

  private static final String SERIES = "SERIES";

  /** Command lines, words parted by bars; each is run as it stands, then as JSON, in one home. */
  static final List<String> SHORT =
      List.of(
          "version",
          "mix|1+31|--total|256mL",
          "mix|1:31|--total|256mL",
          "formula|D-76|--make|700mL|--have|sodium sulfite heptahydrate|--balance|0.1g",
          "formulas",
          "batches",
          "temper|--to|20C|--total|1L|--cold|15C|--hot|50C",
          "wash|--method|fills|--volume|500mL|--fills|6|--dwell|20s|--start|60g/L",
          "drift|--readings|" + READINGS + "|--room|15C",
          "curve|" + STEPS + "|--base-fog|0.20",
          "curves",
          "contrast|" + SERIES + "|--aim|0.58",
          "testroll|--metered|1/60@f8|--middle|8min",
          "testroll|--kept",
          "cues|small-tank|--development|9:00",
          "processes|--show|small-tank",
          "bottles",
          "waste",
          "bottles|D|--add|--contents|D-76|--bath|developer|--role|stock|--holds|1L",
          "bottles|D",
          "care|D",
          "recall",
          "fixers",
          "bottles|F|--add|--contents|F-24|--bath|fixer|--role|working|--holds|1L",
          "test|F|clearing|--seconds|45|--film|TRI-X 400|--temp|20C",
          "tanks",
          "thermometers",
          "waters",
          "measures",
          "instruments",
          "tablets",
          "learned",
          "screens",
          "rolls",
          "loads",
          "time|T-MAX 400|D-76|--dilution|stock|--ei|400|--temp|21C|--vessel|rotary",
          "times|--add|TRI-X 400|XTOL|--minutes|9:00|--temp|20C",
          "times",
          "rolls|--add|135 36 TRI-X 400 @400 \"harbour\"",
          "rolls",
          "loads",
          "backup|" + READINGS + ".db|--force",
          "check|" + READINGS + ".db",
          "restore|" + READINGS + ".db|--force",
          "check",
          "time|TRI-X 400|D-76|--dilution|stock|--ei|800|--temp|20C",
          "time|TRI-X 400|D-76|--dilution|stock|--ei|400|--temp|30C");

  private Training() {}

  /**
   * Runs one training.
   *
   * @param arguments {@code short} or {@code serve}
   * @throws IOException when the home for the training cannot be made or removed
   * @throws InterruptedException when the training is stopped
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path home = Files.createTempDirectory("wetside-training");
    try {
      if (arguments[0].equals("short")) {
        runShort(home);
      } else {
        ServeTraining.run(home);
      }
    } finally {
      remove(home);
    }
    // The server's threads would keep this process alive; leaving it is what writes the archive.
    System.exit(ExitCode.DONE);
  }

  private static void runShort(Path home) throws IOException {
    Path readings = readings(home);
    for (String line : SHORT) {
      run(words(line, readings, home));
      run(words(line + "|--json", readings, home));
    }
    run("version", "--no-such-option");
  }

  /** Writes files with readings of a thermometer, of a film and of a series, the first is named. */
  static Path readings(Path home) throws IOException {
    StringBuilder steps = new StringBuilder("logH,density\n");
    for (int i = 0; i < 15; i++) {
      steps.append(String.format(Locale.ROOT, "%.2f,%.2f%n", -3.0 + 0.15 * i, 0.20 + 0.09 * i));
    }
    Files.writeString(home.resolve("steps.csv"), steps);
    Files.writeString(home.resolve("series.csv"), "minutes,contrast\n6,0.50\n8,0.60\n11,0.70\n");
    return Files.writeString(
        home.resolve("readings.csv"), "elapsed,temp\n0:00,20.0C\n5:00,19.4C\n10:00,18.9C\n");
  }

  /** A line of {@link #SHORT}, ready to be run in this home. */
  static String[] words(String line, Path readings, Path home) {
    String named =
        line.replace(READINGS, readings.toString())
            .replace(STEPS, readings.resolveSibling("steps.csv").toString())
            .replace(SERIES, readings.resolveSibling("series.csv").toString());
    return (named + "|--home|" + home).split("\\|", -1);
  }

  private static void run(String... words) {
    StringWriter discarded = new StringWriter();
    new Main(new PrintWriter(discarded), new PrintWriter(discarded)).run(words);
  }

  private static void remove(Path home) throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
