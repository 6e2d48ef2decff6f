package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;
import org.wetside.app.CannotDoException;
import org.wetside.app.NoAnswerException;
import org.wetside.core.quantity.BadValueException;

class FailureTest {
  @Test
  void everyKindOfFailureHasItsExitCodeAndKeepsItsSentence() {
    assertThat(Failure.of(new NoAnswerException("30 °C is outside 18 to 24 °C")))
        .isEqualTo(new Failure(ExitCode.NO_ANSWER, "30 °C is outside 18 to 24 °C"));
    assertThat(Failure.of(new BadValueException("volume", "-1 mL", "at least 0 mL")))
        .isEqualTo(new Failure(ExitCode.WRONG_INPUT, "volume \"-1 mL\" is refused: at least 0 mL"));
    assertThat(Failure.of(new CannotDoException("port 80 is taken")))
        .isEqualTo(new Failure(ExitCode.NOT_DONE, "port 80 is taken"));
    assertThat(Failure.of(new ServerRefusalException(ExitCode.NO_ANSWER, "no entry")))
        .isEqualTo(new Failure(ExitCode.NO_ANSWER, "no entry"));
  }

  @Test
  void diskFailuresNameTheFile() {
    assertThat(Failure.of(new UncheckedIOException(new NoSuchFileException("leaflet.csv"))))
        .isEqualTo(new Failure(ExitCode.NOT_DONE, "no such file: leaflet.csv"));
    assertThat(Failure.of(new AccessDeniedException("/root/leaflet.csv")))
        .isEqualTo(new Failure(ExitCode.NOT_DONE, "not allowed by the system: /root/leaflet.csv"));
  }

  @Test
  void aFaultOfTheProgramIsSaidToBeOne() {
    Failure failure = Failure.of(new IllegalStateException("no reels"));

    assertThat(failure.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(failure.message()).contains("no reels", "fault of the program");
  }
}
