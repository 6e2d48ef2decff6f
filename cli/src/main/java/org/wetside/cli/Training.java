package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Runs what people run, so that the Java machine can write down which classes that takes (a
 * class-data archive). Called by the build on the packaged program, never by people.
 */
public final class Training {
  /** Command lines as typed; each is run as it stands and in a home of its own, then as JSON. */
  static final List<List<String>> SHORT =
      List.of(
          List.of("version"),
          List.of("mix", "1+31", "--total", "256mL"),
          List.of("temper", "--to", "20C", "--total", "1L", "--cold", "15C", "--hot", "50C"),
          List.of("mix", "1:31", "--total", "256mL"),
          List.of(
              "time",
              "T-MAX 400",
              "D-76",
              "--dilution",
              "stock",
              "--ei",
              "400",
              "--temp",
              "21C",
              "--vessel",
              "rotary"),
          List.of("times", "--add", "TRI-X 400", "XTOL", "--minutes", "9:00", "--temp", "20C"),
          List.of("times"),
          List.of(
              "time", "TRI-X 400", "D-76", "--dilution", "stock", "--ei", "800", "--temp", "20C"),
          List.of(
              "time", "TRI-X 400", "D-76", "--dilution", "stock", "--ei", "400", "--temp", "30C"));

  private Training() {}

  /**
   * Runs one training.
   *
   * @param arguments {@code short} or {@code serve}
   * @throws IOException when the home for the training cannot be made
   */
  public static void main(String[] arguments) throws IOException {
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

  private static void runShort(Path home) {
    for (List<String> line : SHORT) {
      run(home, line);
      run(home, Stream.concat(line.stream(), Stream.of("--json")).toList());
    }
    run(home, List.of("version", "--no-such-option"));
  }

  private static void run(Path home, List<String> line) {
    String[] words =
        Stream.concat(line.stream(), Stream.of("--home", home.toString())).toArray(String[]::new);
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
