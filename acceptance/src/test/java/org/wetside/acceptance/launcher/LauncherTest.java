package org.wetside.acceptance.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ./wetside} says what is missing and how to get it. */
class LauncherTest {
  private static final int COULD_NOT_BE_DONE = 3;
  private static final Path THIS_JAVA = Path.of(System.getProperty("java.home"));

  @TempDir Path folder;

  private BareMachine machine;

  @BeforeEach
  void unpack() throws IOException {
    machine = new BareMachine(folder);
  }

  @Test
  void saysThatThereIsNoJava() throws IOException, InterruptedException {
    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words())
        .contains("there is no Java on this machine", "JDK 17 or newer", "JAVA_HOME");
  }

  @Test
  void saysThatJavaIsTooOld() throws IOException, InterruptedException {
    machine.install("java", "echo 'openjdk version \"11.0.2\" 2019-01-15' >&2");

    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words()).contains("Java 11.0.2", "needs 17 or newer", "openjdk-17-jdk");
  }

  @Test
  void readsTheOldWayOfWritingVersions() throws IOException, InterruptedException {
    machine.install("java", "echo 'java version \"1.8.0_202\"' >&2");

    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words()).contains("Java 1.8.0_202", "needs 17 or newer");
  }

  @Test
  void saysThatJavaHomeLeadsNowhere() throws IOException, InterruptedException {
    BareMachine.Said said =
        machine.run(Map.of("JAVA_HOME", folder.resolve("gone").toString()), "wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words()).contains("JAVA_HOME is " + folder.resolve("gone"), "no Java in it");
  }

  @Test
  void saysThatARuntimeCannotBuild() throws IOException, InterruptedException {
    machine.install(
        "java",
        """
        case $* in
          *-XshowSettings*) echo '    java.home = /a/runtime' >&2 ;;
          *) echo 'openjdk version "21.0.1"' >&2 ;;
        esac""");

    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words()).contains("/a/runtime is a Java runtime without a compiler", "JDK");
  }

  @Test
  void saysThatThereIsNoMaven() throws IOException, InterruptedException {
    machine.link("java", THIS_JAVA.resolve("bin/java"));

    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words())
        .contains("Maven 3.8 or newer, and there is none", "sudo apt-get install maven");
  }

  @Test
  void saysThatMavenIsTooOld() throws IOException, InterruptedException {
    machine.link("java", THIS_JAVA.resolve("bin/java"));
    machine.install("mvn", "echo 'Apache Maven 3.6.3'");

    BareMachine.Said said = machine.run("wetside", "version");

    assertThat(said.exitCode()).isEqualTo(COULD_NOT_BE_DONE);
    assertThat(said.words()).contains("this is Maven 3.6", "3.8 or newer");
  }
}
