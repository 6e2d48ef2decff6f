package org.wetside.acceptance.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code packaging/archives}, with a Java that only writes the file it is asked for. */
class ArchivesTest {
  /** Takes half a second for a training; fails the one that is named in FAILS. */
  private static final String JAVA =
      """
      for word in "$@"; do
        case $word in
          -XshowSettings*) echo '    java.home = /a/java' >&2; exit 0 ;;
          -XX:ArchiveClassesAtExit=*) touch "${word#*=}" ;;
        esac
      done
      sleep 0.5
      for word in "$@"; do [ "$word" != "${FAILS:-}" ] || exit 1; done""";

  /** Beyond what Linux gives to a process. */
  private static final String NO_PROCESS = "99999999";

  @TempDir Path folder;

  private BareMachine machine;
  private Path archives;

  @BeforeEach
  void unpack() throws IOException {
    machine = new BareMachine(folder);
    machine.install("java", JAVA);
    archives = Files.createDirectories(folder.resolve("program/archives"));
  }

  @Test
  void twoAtOnceMakeOneSlot() throws IOException, InterruptedException {
    List<Process> both = List.of(make(Map.of()), make(Map.of()));
    for (Process one : both) {
      assertThat(one.waitFor()).isZero();
    }

    assertThat(names(slot())).containsExactly("ready", "serve.jsa", "short.jsa");
  }

  @Test
  void makingItAgainReplacesTheSlot() throws IOException, InterruptedException {
    assertThat(make(Map.of()).waitFor()).isZero();
    assertThat(make(Map.of()).waitFor()).isZero();

    assertThat(names(slot())).containsExactly("ready", "serve.jsa", "short.jsa");
  }

  @Test
  void oneFailureKeepsTheOtherArchive() throws IOException, InterruptedException {
    assertThat(make(Map.of("FAILS", "short")).waitFor()).isNotZero();
    assertThat(names(slot())).containsExactly("ready", "serve.jsa");

    assertThat(make(Map.of("FAILS", "serve")).waitFor()).isNotZero();
    assertThat(names(slot())).containsExactly("ready", "short.jsa");
  }

  @Test
  void aLockLeftBehindCountsForNothing() throws IOException, InterruptedException {
    assertThat(make(Map.of()).waitFor()).isZero();
    String slot = slot().getFileName().toString();
    Files.createSymbolicLink(archives.resolve("." + slot + ".lock"), Path.of(NO_PROCESS));

    assertThat(make(Map.of("FAILS", "short")).waitFor()).isNotZero();

    assertThat(names(slot())).as("made again").containsExactly("ready", "serve.jsa");
  }

  @Test
  void whoeverComesSecondLeavesItToTheFirst() throws IOException, InterruptedException {
    assertThat(make(Map.of()).waitFor()).isZero();
    String mine = String.valueOf(ProcessHandle.current().pid());
    Path lock = archives.resolve("." + slot().getFileName() + ".lock");
    Files.createSymbolicLink(lock, Path.of(mine));

    Process second = make(Map.of("FAILS", "short"));
    assertThat(second.waitFor()).isZero();
    assertThat(second.inputReader().readLine()).contains("process " + mine);

    assertThat(lock).as("it is not the second's to take away").isSymbolicLink();
    Files.delete(lock);
    assertThat(names(slot())).containsExactly("ready", "serve.jsa", "short.jsa");
  }

  private Process make(Map<String, String> variables) throws IOException {
    return machine.start(
        variables,
        "packaging/archives",
        folder.resolve("bin/java").toString(),
        folder.resolve("program").toString());
  }

  /** The one slot; nothing else may be left, hidden or not. */
  private Path slot() throws IOException {
    assertThat(names(archives)).hasSize(1);
    return archives.resolve(names(archives).get(0));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
