package org.wetside.core.hands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.SomeSteps;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.run.Phase;

class FreeHandsTest {
  static IntStream seeds() {
    return IntStream.range(0, 25);
  }

  /**
   * Double stands in the fixer when Single is drained; the fixer lasts longer until that is over.
   */
  @Test
  void theFixerWaitsForTheOtherTank() {
    TankInTest fixing = TankInTest.poured("Double", SomeSteps.ordinary(), 0).until(620);
    List<AttentionWindow> other =
        List.of(window(Want.DRAIN, 905, 930), window(Want.AGITATE, 930, 940));

    Repair repair = FreeHands.of("Double", fixing.state(), other, TankInTest.at(700), NEVER);

    // the drain would come at 900 and the pour at 915: both must come after 950, when the hands
    // have
    // been free for ten seconds; what else it takes to stay clear of the bouts is for the search
    assertThat(repair.moves()).extracting(Lengthening::step).containsExactly(2);
    assertThat(repair.later()).isBetween(Duration.ofSeconds(50), Duration.ofSeconds(70));
    assertThat(repair.clashes())
        .as("only a bout, which nobody can move, is left")
        .allMatch(clash -> clash.one().want() == Want.AGITATE);
  }

  @Test
  void aDeveloperIsNeverLengthenedAndTheClashIsNamed() {
    TankInTest developing = TankInTest.poured("Double", SomeSteps.ordinary(), 0).until(400);
    List<AttentionWindow> other = List.of(window(Want.DRAIN, 520, 545));

    Repair repair = FreeHands.of("Double", developing.state(), other, TankInTest.at(400), NEVER);

    assertThat(repair.moves()).isEmpty();
    assertThat(repair.clashes())
        .extracting(clash -> clash.one().want() + " of step " + clash.one().step())
        .containsExactly("DRAIN of step 0", "POUR of step 1");
  }

  @Test
  void whatIsFarEnoughApartIsLeftAlone() {
    TankInTest developing = TankInTest.poured("Double", SomeSteps.ordinary(), 0).until(100);
    // agitated from 130 to 135 and from 190 to 195
    List<AttentionWindow> other = List.of(window(Want.DRAIN, 145, 180));

    Repair repair = FreeHands.of("Double", developing.state(), other, TankInTest.at(100), NEVER);

    assertThat(repair).isEqualTo(new Repair(List.of(), List.of()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingButWhatMayLastLongerIsMovedAndNeverForTheWorse(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    TankInTest one = TankInTest.poured("One", SomeSteps.random(random), 0);
    TankInTest other =
        TankInTest.poured("Other", SomeSteps.random(random), random.nextInt(0, 1500));
    long now = random.nextInt(1500, 2000);
    one.until(now);
    other.until(now);
    List<AttentionWindow> hands = Attention.after(TankInTest.at(now), other.windows());
    List<Clash> before = Clash.between(after(now, one), hands);

    Repair repair = FreeHands.of("One", one.state(), hands, TankInTest.at(now), NEVER);

    assertThat(repair.moves())
        .allMatch(move -> !one.state().plan().step(move.step()).kind().developing());
    assertThat(repair.clashes()).hasSizeLessThanOrEqualTo(before.size());
    assertThat(repair.moves().isEmpty() || repair.clashes().size() < before.size()).isTrue();
    // the judge of the run refuses whatever goes past a limit
    one.lengthened(repair.moves(), TankInTest.at(now));
    assertThat(Clash.between(after(now, one), hands)).isEqualTo(repair.clashes());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noOtherWayLeavesFewerClashesOrMovesLess(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    TankInTest one = TankInTest.poured("One", shortSteps(random), 0).until(15);
    List<AttentionWindow> hands = someWindows(random);
    Instant now = TankInTest.at(15);

    Repair repair = FreeHands.of("One", one.state(), hands, now, NEVER);

    Repair best = way(one, hands, now, List.of());
    for (int a = 0; a <= limit(one, 1); a++) {
      for (int b = 0; b <= limit(one, 2); b++) {
        for (int c = 0; c <= limit(one, 3); c++) {
          List<Lengthening> moves = moves(a, b, c);
          Repair way = way(one, hands, now, moves);
          best = way.betterThan(best) ? way : best;
        }
      }
    }
    assertThat(repair.clashes()).hasSameSizeAs(best.clashes());
    assertThat(repair.later()).isEqualTo(best.later());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasRepairedIsNotMovedAgain(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    TankInTest one = TankInTest.poured("One", shortSteps(random), 0).until(15);
    List<AttentionWindow> hands = someWindows(random);
    Instant now = TankInTest.at(15);
    one.lengthened(FreeHands.of("One", one.state(), hands, now, NEVER).moves(), now);

    assertThat(FreeHands.of("One", one.state(), hands, now, NEVER).moves()).isEmpty();
  }

  @Test
  void aRunThatWaitsIsLeftToThePersonItWaitsFor() {
    TankInTest waiting =
        TankInTest.poured("Double", SomeSteps.ordinary(), 0)
            .until(700)
            .write(3, new org.wetside.core.run.Happening.WaitAsked(), TankInTest.at(700), "laptop")
            .until(905);
    assertThat(waiting.state().phase()).isEqualTo(Phase.WAITING);
    List<AttentionWindow> other = List.of(window(Want.DRAIN, 910, 2000));

    Repair repair = FreeHands.of("Double", waiting.state(), other, TankInTest.at(906), NEVER);

    assertThat(repair.moves()).isEmpty();
    assertThat(repair.clashes()).isNotEmpty();
  }

  private static final Instant NEVER = Instant.EPOCH;

  private static AttentionWindow window(Want want, long from, long to) {
    return new AttentionWindow("Single", 0, want, TankInTest.at(from), TankInTest.at(to));
  }

  private static List<AttentionWindow> after(long now, TankInTest tank) {
    return Attention.after(TankInTest.at(now), tank.windows());
  }

  /** A developer, then three steps that may last at most eight seconds longer. */
  private static List<Step> shortSteps(SplittableRandom random) {
    List<Step> steps = new ArrayList<>();
    steps.add(SomeSteps.step(StepKind.DEVELOPER, "D", 60, AgitationSchedule.none()));
    for (StepKind kind : List.of(StepKind.STOP_BATH, StepKind.FIXER, StepKind.WASH)) {
      Step step =
          SomeSteps.step(
              kind,
              "",
              random.nextInt(30, 90),
              random.nextBoolean() ? SomeSteps.handbook() : AgitationSchedule.none());
      Duration most = step.duration().orElseThrow().plusSeconds(random.nextInt(0, 9));
      steps.add(
          new Step(
              step.kind(),
              step.bottle(),
              step.duration(),
              step.pourIn(),
              step.drainLead(),
              step.agitation(),
              step.band(),
              step.afterUse(),
              step.light(),
              Optional.of(most),
              step.standing(),
              step.source()));
    }
    return steps;
  }

  private static List<AttentionWindow> someWindows(SplittableRandom random) {
    List<AttentionWindow> windows = new ArrayList<>();
    for (long at = 20; at < 400; at += random.nextInt(30, 120)) {
      windows.add(window(Want.AGITATE, at, at + random.nextInt(1, 20)));
    }
    return windows;
  }

  private static Repair way(
      TankInTest one, List<AttentionWindow> hands, Instant now, List<Lengthening> moves) {
    List<AttentionWindow> windows =
        Attention.of("One", Lengthened.state(one.state(), moves), NEVER);
    return new Repair(
        moves, Clash.between(Attention.after(now, windows), Attention.after(now, hands)));
  }

  private static int limit(TankInTest tank, int step) {
    return (int) tank.state().canStillAdd(step).toSeconds();
  }

  private static List<Lengthening> moves(int... seconds) {
    List<Lengthening> moves = new ArrayList<>();
    for (int i = 0; i < seconds.length; i++) {
      if (seconds[i] > 0) {
        moves.add(new Lengthening(i + 1, Duration.ofSeconds(seconds[i])));
      }
    }
    return moves;
  }
}
