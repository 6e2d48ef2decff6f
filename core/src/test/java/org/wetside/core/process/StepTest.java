package org.wetside.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;

class StepTest {
  @ParameterizedTest
  @EnumSource(StepKind.class)
  void aDeveloperIsNeverLengthened(StepKind kind) {
    Optional<Duration> limit = LongestTime.of(kind, Duration.ofMinutes(4));
    if (kind.developing()) {
      assertThat(limit).isEmpty();
      assertThatThrownBy(() -> lengthened(kind)).hasMessageContaining("never lengthened");
    } else if (kind.wet()) {
      assertThat(limit).hasValueSatisfying(most -> assertThat(most).isPositive());
    }
    assertThat(StepKind.fromWord(kind.word())).isEqualTo(kind);
  }

  private static Step lengthened(StepKind kind) {
    return new Step(
        kind,
        Optional.empty(),
        Optional.of(Duration.ofMinutes(4)),
        Step.POUR_IN,
        Step.DRAIN_LEAD,
        AgitationSchedule.none(),
        Optional.empty(),
        AfterUse.discard(),
        Light.DARK,
        Optional.of(Duration.ofMinutes(5)),
        Standing.COMMON_PRACTICE,
        "");
  }

  @Test
  void theLimitsAreTheOnesOfTheTrade() {
    assertThat(LongestTime.of(StepKind.STOP_BATH, Duration.ofSeconds(30)))
        .contains(Duration.ofMinutes(2));
    assertThat(LongestTime.of(StepKind.FIXER, Duration.ofMinutes(4)))
        .contains(Duration.ofMinutes(8));
    assertThat(LongestTime.of(StepKind.FIXER, Duration.ofMinutes(6)))
        .contains(Duration.ofMinutes(10));
    assertThat(LongestTime.of(StepKind.FIXER, Duration.ofMinutes(12)))
        .contains(Duration.ofMinutes(12));
    assertThat(LongestTime.of(StepKind.WASH, Duration.ofMinutes(10)))
        .contains(Duration.ofMinutes(60));
  }

  /** Judgements of this program, written down in decision 32. */
  @ParameterizedTest
  @CsvSource({
    "rinse, 30, 120",
    "developer bath B, 240, 480",
    "monobath, 360, 720",
    "wash aid, 120, 240",
    "bleach, 390, 780",
    "stabiliser, 60, 120",
    "rinse, 180, 180"
  })
  void theOtherLimitsAreTheOnesDecided(String kind, long seconds, long most) {
    assertThat(LongestTime.of(StepKind.fromWord(kind), Duration.ofSeconds(seconds)))
        .contains(Duration.ofSeconds(most));
  }

  @Test
  void refusalsNameTheStepTheValueAndTheLimit() {
    assertThatThrownBy(() -> SomeSteps.step(StepKind.FIXER, "F", 5, AgitationSchedule.none()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("fixer time")
        .hasMessageContaining("0:05")
        .hasMessageContaining("15 s");
  }

  @Test
  void aProcessWithoutADevelopmentTimeAsksForIt() {
    Step asked =
        new Step(
            StepKind.DEVELOPER,
            Optional.of("D"),
            Optional.empty(),
            Step.POUR_IN,
            Step.DRAIN_LEAD,
            AgitationSchedule.none(),
            Optional.empty(),
            AfterUse.discard(),
            Light.DARK,
            Optional.empty(),
            Standing.COMMON_PRACTICE,
            "");
    FilmProcess process = new FilmProcess("own", "Own", "", false, List.of(asked));
    assertThatThrownBy(() -> Timeline.of(process.steps())).hasMessageContaining("developer time");
    assertThat(Timeline.of(process.withDevelopment(Duration.ofMinutes(9)).steps()).length())
        .isEqualTo(Duration.ofSeconds(550));
  }

  @Test
  void semiStandAgitatesOnceHalfWay() {
    AgitationSchedule semi =
        AgitationSchedule.intervals(
            Manner.SEMI_STAND,
            Cycle.ofInversions(10, Cycle.PACE),
            Duration.ZERO,
            Cycle.ofInversions(3, Cycle.PACE),
            true);
    List<Bout> bouts = Bouts.of(semi, Duration.ofMinutes(60));
    assertThat(bouts)
        .extracting(Bout::inStep)
        .containsExactly(Duration.ZERO, Duration.ofMinutes(30));
  }
}
