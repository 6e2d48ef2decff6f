package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetside.core.run.HandLedRun.DEVELOPER;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.core.thermal.DevelopmentDose;
import org.wetside.core.thermal.DevelopmentRate;

/** Developer 9:00 at 20 °C, full at 10 s, rate e^0.08 per kelvin between 18 and 24 °C. */
class RunDoseTest {
  private static final double BETA = 0.08;

  @Test
  void withoutAReadingTheEndStaysWhereItWas() {
    assertThat(seconds(lasts(begun().at(200)))).isEqualTo(540);
  }

  /**
   * By hand: straight from 20 °C when full to 19 °C at 100 s, then 19 °C. The first 100 s are worth
   * 100·(1 − e^−0.08)/0.08, the rest goes at e^−0.08.
   */
  @Test
  void aColdReadingMovesTheEnd() {
    HandLedRun run = begun().at(110);
    read(run, 19, false);
    double first = 100 * -Math.expm1(-BETA) / BETA;
    double expected = 100 + (540 - first) * Math.exp(BETA);
    assertThat(seconds(lasts(run))).isCloseTo(expected, within(0.01));
    assertThat(seconds(RunDose.movedByLast(run.state(), DEVELOPER)))
        .isCloseTo(expected - 540, within(0.01));
    Instant drain = run.moments().steps().get(DEVELOPER).drain();
    run.at(drain.minusMillis(1));
    assertThat(run.state().steps().get(DEVELOPER).drain()).isEmpty();
    run.at(drain);
    assertThat(run.state().steps().get(DEVELOPER).drain()).isPresent();
  }

  @Test
  void takingTheReadingBackTakesTheMoveBack() {
    HandLedRun run = begun().at(110);
    read(run, 19, false);
    assertThat(run.undo()).isEqualTo(new Outcome.Applied());
    assertThat(seconds(lasts(run))).isEqualTo(540);
  }

  @Test
  void aMoveOfMoreThanFifteenPercentIsAskedAboutOnce() {
    HandLedRun run = begun().at(40);
    Outcome asked = read(run, 18, false);
    assertThat(asked).isInstanceOf(Outcome.Asks.class);
    assertThat(((Outcome.Asks) asked).question()).contains("15 %");
    assertThat(seconds(lasts(run))).isEqualTo(540);
    assertThat(read(run, 18, true)).isEqualTo(new Outcome.Applied());
    assertThat(seconds(lasts(run))).isGreaterThan(540 * 1.15);
  }

  /**
   * 600 ml of developer at 20 °C and 150 J/K at 15 °C come to 19.72 °C (heat shared out by hand).
   */
  @Test
  void aReadingBeforeThePourIsTheBathsAndNotInTheDose() {
    HandLedRun run = new HandLedRun(basis(Optional.of(Temperature.ofCelsius(15))));
    read(run, 20, false);
    run.send(DEVELOPER, new Happening.Started(java.util.List.of("lid-locked"), false));
    run.at(60);
    DevelopmentDose dose = RunDose.of(run.state(), DEVELOPER).orElseThrow();
    double mixed = (600 * 4.18 * 20 + 150 * 15.0) / (600 * 4.18 + 150);
    assertThat(dose.curve().at(0).celsius()).isCloseTo(mixed, within(1e-9));
    assertThat(dose.curve().known()).hasSize(1);
    assertThat(seconds(lasts(run))).isCloseTo(540 * Math.exp(BETA * (20 - mixed)), within(0.01));
  }

  @Test
  void withTheRoomKnownTwoReadingsTellHowTheBathDrifts() {
    HandLedRun run = begun(basis(Optional.of(Temperature.ofCelsius(15)))).at(70);
    read(run, 20, false);
    run.at(310);
    read(run, 19.6, false);
    DevelopmentDose dose = RunDose.of(run.state(), DEVELOPER).orElseThrow();
    assertThat(dose.curve().afterwards()).isPresent();
    assertThat(dose.curve().at(540).celsius()).isLessThan(19.6).isGreaterThan(19.0);
  }

  @Test
  void aStepCutShortKeepsItsCutWhenTheDoseMoves() {
    HandLedRun run = begun().at(110);
    run.send(DEVELOPER, new Happening.CutShort(Duration.ofSeconds(60), "thin wanted", true));
    read(run, 19, false);
    double first = 100 * -Math.expm1(-BETA) / BETA;
    assertThat(seconds(lasts(run))).isCloseTo(100 + (480 - first) * Math.exp(BETA), within(0.01));
  }

  /** A hundred runs for each seed: the dose never falls, and the end is where it is complete. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theDoseOnlyGrowsAndTheEndIsWhereItIsComplete(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 100; n++) {
      HandLedRun run =
          begun(basis(Optional.of(Temperature.ofCelsius(14 + 10 * random.nextDouble()))));
      double at = 20;
      while (at < 400) {
        run.at(at);
        read(run, 18 + 5 * random.nextDouble(), true);
        at += 20 + 150 * random.nextDouble();
      }
      DevelopmentDose dose = RunDose.of(run.state(), DEVELOPER).orElseThrow();
      Duration before = Duration.ZERO;
      for (int second = 1; second < 900; second += 7) {
        Duration reached = dose.reached(Duration.ofSeconds(second));
        assertThat(reached).isGreaterThan(before);
        before = reached;
      }
      assertThat(seconds(dose.reached(lasts(run)))).isCloseTo(540, within(0.1));
      assertThat(RunState.replay(run.state().plan(), run.state().events())).isEqualTo(run.state());
    }
  }

  private static HandLedRun begun() {
    return begun(basis(Optional.empty()));
  }

  private static HandLedRun begun(Optional<DoseBasis> basis) {
    return HandLedRun.begun(basis);
  }

  private static Optional<DoseBasis> basis(Optional<Temperature> room) {
    DevelopmentRate rate =
        new DevelopmentRate(
            BETA,
            Temperature.ofCelsius(20),
            new TemperatureRange(Temperature.ofCelsius(18), Temperature.ofCelsius(24)),
            Standing.COMPUTED,
            "a test");
    return Optional.of(
        new DoseBasis(
            rate, room, DoseBasis.USUAL_TANK_J_PER_K, Optional.of(Volume.ofMillilitres(600))));
  }

  private static Outcome read(HandLedRun run, double celsius, boolean confirmed) {
    Temperature read = Temperature.ofCelsius(celsius);
    return run.send(DEVELOPER, new Happening.ReadingTaken("2", read, read, confirmed));
  }

  private static Duration lasts(HandLedRun run) {
    return Placement.lasts(run.state(), DEVELOPER);
  }

  private static double seconds(Duration time) {
    return TimeSpan.toSeconds(time);
  }
}
