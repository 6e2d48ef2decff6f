package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A training that runs into an error teaches the archive nothing of what people run. */
class TrainingTest {
  /** They need a load, a bottle, a developed roll or a picture, and no training makes one. */
  private static final Set<String> NOT_SHORT =
      Set.of("serve", "demo", "completion", "sheet", "label", "calibrate", "patches", "judge");

  @Test
  void runsEveryShortCommand() {
    Set<String> trained = new TreeSet<>(NOT_SHORT);
    Training.SHORT.forEach(line -> trained.add(line.split("\\|", -1)[0]));

    assertThat(trained).containsExactlyInAnyOrderElementsOf(Commands.NAMES);
  }

  @Test
  void getsTheAnswersThatItIsMeantToGet(@TempDir Path home) throws IOException {
    Path readings = Training.readings(home);
    List<Integer> exitCodes = new ArrayList<>();
    for (String line : Training.SHORT) {
      exitCodes.add(Typed.of(Training.words(line, readings, home)).exitCode());
    }

    assertThat(exitCodes.subList(0, 2)).containsOnly(ExitCode.DONE);
    assertThat(exitCodes.get(2))
        .as("the question which of the two")
        .isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(exitCodes.subList(3, exitCodes.size() - 1)).containsOnly(ExitCode.DONE);
    assertThat(exitCodes.get(exitCodes.size() - 1)).as("30 °C").isEqualTo(ExitCode.NO_ANSWER);
  }
}
