package org.wetside.core.wash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;

class TwoLiquidsTest {
  private static final Concentration START = Concentration.ofGramsPerLitre(60);
  private static final Volume FILL = Volume.ofMillilitres(500);
  private static final CarriedLiquid ONE_ROLL =
      CarriedLiquid.of(UnitOfUse.ONE_ROLL, Volume.ofMillilitres(10), Volume.ofMillilitres(2));
  private static final Duration HALF_TIME = Duration.ofSeconds(60);

  /**
   * The differential equations as they stand in the Javadoc, and a third: what has run away.
   *
   * @param k exchange per second
   * @param r the same as the water feels it
   * @param q share of the water that runs away in a second
   */
  record Equations(double k, double r, double q) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double seconds, double[] y) {
      double between = y[0] - y[1];
      return new double[] {-k * between, r * between - q * y[1], q * y[1]};
    }
  }

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  /** The closed form against an integrator that knows nothing of it, over random washes. */
  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithAnIndependentIntegrator(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double rolls = 0.5 + 4 * random.nextDouble();
    double absorbedMl = 2 * rolls;
    double clingingMl = absorbedMl * (0.05 + 8 * random.nextDouble());
    CarriedLiquid carried =
        CarriedLiquid.of(
            UnitOfUse.ofRolls(rolls),
            Volume.ofMillilitres(absorbedMl + clingingMl),
            Volume.ofMillilitres(2));
    double halfTimeSeconds = 5 + 235 * random.nextDouble();
    List<WaterChange> changes = new ArrayList<>();
    int fills = 1 + random.nextInt(6);
    for (int i = 0; i < fills; i++) {
      changes.add(
          new WaterChange(
              Volume.ofMillilitres(100 + 1900 * random.nextDouble()),
              TimeSpan.ofSeconds(1 + 300 * random.nextDouble()),
              FlowRate.ofLitresPerMinute(random.nextBoolean() ? 0 : 5 * random.nextDouble())));
    }
    List<InWash> states =
        new TwoLiquids(carried, TimeSpan.ofSeconds(halfTimeSeconds)).afterEach(START, changes);

    double film = START.gramsPerLitre();
    double water = START.gramsPerLitre();
    for (int i = 0; i < fills; i++) {
      WaterChange change = changes.get(i);
      double around = clingingMl + change.water().millilitres();
      double k = Math.log(2) / halfTimeSeconds;
      double q = change.flow().litresPerMinute() * 1000 / 60 / around;
      Equations equations = new Equations(k, k * absorbedMl / around, q);
      double fresh = water * clingingMl / around;
      double[] end =
          new DormandPrince853Integrator(1e-9, 10, 1e-15, 1e-12)
              .integrate(
                  equations,
                  new ODEState(0, new double[] {film, fresh, 0}),
                  TimeSpan.toSeconds(change.dwell()))
              .getPrimaryState();
      InWash state = states.get(i);
      assertThat(state.inFilm().gramsPerLitre()).isCloseTo(end[0], within(1e-7 * end[0] + 1e-12));
      assertThat(state.inWater().gramsPerLitre()).isCloseTo(end[1], within(1e-7 * end[1] + 1e-12));
      // Nothing is lost: in the film, in the water, and what has run away.
      double before = film * absorbedMl + fresh * around;
      double after =
          state.inFilm().gramsPerLitre() * absorbedMl
              + (state.inWater().gramsPerLitre() + end[2]) * around;
      assertThat(after).isCloseTo(before, within(1e-7 * before + 1e-12));
      film = end[0];
      water = end[1];
    }
  }

  /** Long dwells tend to C0·(v/(v + V))^n; short ones leave far more. */
  @Test
  void longDwellsComeToTheRuleOfFills() {
    List<InWash> long6 = wash(Duration.ofHours(2));
    List<InWash> short6 = wash(Duration.ofSeconds(20));
    List<Concentration> rule =
        EquilibriumRule.afterEach(START, ONE_ROLL.total(), Collections.nCopies(6, FILL));
    for (int fill = 0; fill < 6; fill++) {
      double best = rule.get(fill).gramsPerLitre();
      assertThat(long6.get(fill).inFilm().gramsPerLitre()).isCloseTo(best, within(1e-9 * best));
      assertThat(short6.get(fill).inFilm().gramsPerLitre()).isGreaterThan(10 * best);
    }
  }

  @Test
  void theCourseRunsThroughTheEndOfEachChange() {
    List<WaterChange> changes =
        Collections.nCopies(3, WaterChange.standing(FILL, Duration.ofSeconds(80)));
    TwoLiquids model = new TwoLiquids(ONE_ROLL, HALF_TIME);
    List<TwoLiquids.AtMoment> course = model.course(START, changes, 4);
    List<InWash> ends = model.afterEach(START, changes);
    assertThat(course).hasSize(13);
    assertThat(course.get(0).state().inFilm()).isEqualTo(START);
    for (int change = 0; change < 3; change++) {
      assertThat(course.get(4 * (change + 1)).state()).isEqualTo(ends.get(change));
      assertThat(course.get(4 * (change + 1)).elapsed().toSeconds()).isEqualTo(80L * (change + 1));
    }
  }

  private static List<InWash> wash(Duration dwell) {
    return new TwoLiquids(ONE_ROLL, HALF_TIME)
        .afterEach(START, Collections.nCopies(6, WaterChange.standing(FILL, dwell)));
  }

  /** Film in ever cleaner water follows the half-times themselves. */
  @Test
  void muchRunningWaterComesToTheRuleOfHalfTimes() {
    WaterChange change =
        new WaterChange(
            Volume.ofLitres(100), Duration.ofMinutes(10), FlowRate.ofLitresPerMinute(100));
    double film =
        new TwoLiquids(ONE_ROLL, HALF_TIME)
            .afterEach(START, List.of(change))
            .get(0)
            .inFilm()
            .gramsPerLitre();
    double rule = 60 * HalfTimeRule.left(Duration.ofMinutes(10), HALF_TIME);
    assertThat(film).isGreaterThan(rule).isLessThan(1.2 * rule);
  }

  /** A wash of an hour is 60 half-times: the digits must still be there. */
  @Test
  void smallStrengthsKeepTheirDigits() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 200; i++) {
      double k = 1e-3 + random.nextDouble();
      double r = k * random.nextDouble() * 0.2;
      double q = random.nextDouble() * 0.1;
      InWash whole = new Exchange(k, r, q).after(60, 0, 3000);
      InWash half = new Exchange(k, r, q).after(60, 0, 1500);
      InWash twice =
          new Exchange(k, r, q)
              .after(half.inFilm().gramsPerLitre(), half.inWater().gramsPerLitre(), 1500);
      double film = whole.inFilm().gramsPerLitre();
      assertThat(twice.inFilm().gramsPerLitre()).isCloseTo(film, within(1e-9 * film));
      assertThat(film).isNotNegative();
    }
  }

  /**
   * A longer dwell, more flow, a shorter half-time and more standing water never leave more in the
   * film. (More water at the same flow may: it takes longer to change.)
   */
  @Test
  void washingBetterNeverLeavesMore() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 500; i++) {
      double ml = 100 + 900 * random.nextDouble();
      double s = 5 + 200 * random.nextDouble();
      double lpm = 3 * random.nextDouble();
      double half = 10 + 100 * random.nextDouble();
      double plain = film(ml, s, lpm, half);
      double standing = film(ml, s, 0, half);
      assertThat(film(ml * 1.5, s, 0, half)).isLessThanOrEqualTo(standing * (1 + 1e-12));
      assertThat(film(ml, s, lpm + 1, half)).isLessThanOrEqualTo(plain * (1 + 1e-12));
      assertThat(film(ml, s * 1.5, lpm, half)).isLessThanOrEqualTo(plain * (1 + 1e-12));
      assertThat(film(ml, s, lpm, half / 2)).isLessThanOrEqualTo(plain * (1 + 1e-12));
    }
  }

  private static double film(double ml, double seconds, double lpm, double halfTime) {
    WaterChange change =
        new WaterChange(
            Volume.ofMillilitres(ml), TimeSpan.ofSeconds(seconds), FlowRate.ofLitresPerMinute(lpm));
    return new TwoLiquids(ONE_ROLL, TimeSpan.ofSeconds(halfTime))
        .afterEach(START, Collections.nCopies(3, change))
        .get(2)
        .inFilm()
        .gramsPerLitre();
  }

  @Test
  void carryOverThatTheFilmTakesUpWholeIsRefused() {
    assertThatThrownBy(
            () ->
                CarriedLiquid.of(
                    UnitOfUse.ofRolls(2), Volume.ofMillilitres(4), Volume.ofMillilitres(2)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("carry-over \"4 mL\"")
        .hasMessageContaining("more than the 4 mL");
    assertThatThrownBy(() -> CarriedLiquid.of(UnitOfUse.NONE, Volume.ofMillilitres(9), Volume.ZERO))
        .hasMessageContaining("film to wash \"0.0 rolls\"");
    assertThatThrownBy(() -> new TwoLiquids(ONE_ROLL, Duration.ZERO))
        .hasMessageContaining("half-time");
  }

  @Test
  void impossibleChangesOfWaterAreRefused() {
    assertThatThrownBy(() -> WaterChange.standing(Volume.ZERO, HALF_TIME))
        .hasMessageContaining("water for one fill \"0 mL\"");
    assertThatThrownBy(() -> WaterChange.standing(Volume.ofLitres(101), HALF_TIME))
        .hasMessageContaining("100 L");
    assertThatThrownBy(() -> WaterChange.standing(FILL, Duration.ofHours(25)))
        .hasMessageContaining("24 h");
    assertThatThrownBy(() -> new WaterChange(FILL, HALF_TIME, FlowRate.ofLitresPerMinute(101)))
        .hasMessageContaining("100 L/min");
  }
}
