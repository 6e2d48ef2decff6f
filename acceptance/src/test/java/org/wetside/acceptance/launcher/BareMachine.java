package org.wetside.acceptance.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A folder with our scripts, and a path on which only what a test puts there can be found. */
final class BareMachine {
  /** What every system has and the scripts use. */
  private static final String TOOLS =
      "bash cat cksum cp cut date dirname env find grep head ln ls mkdir mv nice readlink rm sed"
          + " sleep sort tail tee touch tr";

  private static final Path BASH = found("bash");

  private final Path folder;

  BareMachine(Path folder) throws IOException {
    this.folder = folder;
    Path root = Path.of("..").toAbsolutePath().normalize();
    Files.createDirectories(folder.resolve("packaging"));
    Files.createDirectories(folder.resolve("bin"));
    for (String script : List.of("wetside", "packaging/archives", "packaging/build")) {
      Files.copy(root.resolve(script), folder.resolve(script));
    }
    Files.copy(root.resolve("packaging/java-check"), folder.resolve("packaging/java-check"));
    for (String tool : TOOLS.split(" ", -1)) {
      link(tool, found(tool));
    }
  }

  /** How a script ended. */
  record Said(int exitCode, String words) {}

  Path folder() {
    return folder;
  }

  /** A command on the path that is this script. */
  Path install(String name, String script) throws IOException {
    Path file = folder.resolve("bin").resolve(name);
    Files.writeString(file, "#!" + BASH + "\n" + script + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    return file;
  }

  /** A command on the path that is really this program. */
  void link(String name, Path program) throws IOException {
    install(name, "exec '" + program + "' \"$@\"");
  }

  /** Runs one of our scripts to its end. */
  Said run(String... words) throws IOException, InterruptedException {
    return run(Map.of(), words);
  }

  /** The same with these variables and no other beside the path. */
  Said run(Map<String, String> variables, String... words)
      throws IOException, InterruptedException {
    Process process = start(variables, words);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Said(process.waitFor(), said);
  }

  Process start(Map<String, String> variables, String... words) throws IOException {
    List<String> command = Stream.concat(Stream.of(BASH.toString()), Stream.of(words)).toList();
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().clear();
    builder.environment().put("PATH", folder.resolve("bin").toString());
    builder.environment().putAll(variables);
    return builder.start();
  }

  private static Path found(String tool) {
    return Stream.of("/bin", "/usr/bin", "/usr/local/bin", "/opt/homebrew/bin")
        .map(place -> Path.of(place, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new UncheckedIOException(new IOException("no " + tool + " here")));
  }
}
