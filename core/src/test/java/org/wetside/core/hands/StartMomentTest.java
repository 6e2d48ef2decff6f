package org.wetside.core.hands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cycle;
import org.wetside.core.process.Manner;
import org.wetside.core.process.SomeSteps;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;

class StartMomentTest {
  static IntStream seeds() {
    return IntStream.range(0, 4);
  }

  /** Bouts of 5 s each minute leave room for those of another tank half a minute later. */
  @Test
  void twoDevelopersTakeTurns() {
    TankInTest one = TankInTest.poured("One", gentle(), 0).until(100);
    TankInTest two = TankInTest.ready("Two", gentle());

    StartAdvice advice = StartMoment.of("Two", two.state(), one.windows(), TankInTest.at(100));

    assertThat(clear(two, one, advice.from())).isTrue();
    assertThat(advice.from()).isAfter(TankInTest.at(100));
    assertThat(advice.ifNow()).isNotEmpty();
  }

  @Test
  void withNothingElseAtWorkItBeginsAtOnce() {
    TankInTest two = TankInTest.ready("Two", SomeSteps.ordinary());

    StartAdvice advice = StartMoment.of("Two", two.state(), List.of(), TankInTest.at(100));

    assertThat(advice.from()).isEqualTo(TankInTest.at(100));
    assertThat(advice.ifNow()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theMomentIsClearAndNoneBeforeItIsForLong(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    TankInTest one = TankInTest.poured("One", SomeSteps.random(random), 0);
    long now = random.nextInt(0, 600);
    one.until(now);
    List<Step> steps = SomeSteps.random(random);
    TankInTest two = TankInTest.ready("Two", steps);

    StartAdvice advice = StartMoment.of("Two", two.state(), one.windows(), TankInTest.at(now));

    assertThat(clear(two, one, advice.from())).isTrue();
    assertThat(clear(two, one, advice.until())).isTrue();
    int inARow = 0;
    for (Instant at = TankInTest.at(now); at.isBefore(advice.from()); at = at.plusSeconds(1)) {
      inARow = clear(two, one, at) ? inARow + 1 : 0;
      assertThat(inARow).isLessThanOrEqualTo(10);
    }
    TankInTest poured =
        TankInTest.poured(
                "Two", steps, advice.from().getEpochSecond() - TankInTest.EVENING.getEpochSecond())
            .lengthened(advice.moves(), advice.from());
    assertThat(Clash.between(Attention.after(advice.from(), poured.windows()), one.windows()))
        .isEmpty();
  }

  private static boolean clear(TankInTest two, TankInTest one, Instant at) {
    return FreeHands.of("Two", two.state(), one.windows(), at, at).clashes().isEmpty();
  }

  private static List<Step> gentle() {
    AgitationSchedule gentle =
        AgitationSchedule.intervals(
            Manner.INVERSION,
            Cycle.ofLength(java.time.Duration.ofSeconds(5)),
            java.time.Duration.ofMinutes(1),
            Cycle.ofLength(java.time.Duration.ofSeconds(5)),
            true);
    return List.of(
        SomeSteps.step(StepKind.DEVELOPER, "D", 540, gentle),
        SomeSteps.step(StepKind.FIXER, "F", 300, gentle),
        SomeSteps.step(StepKind.WASH, "", 600, AgitationSchedule.none()));
  }
}
