package org.wetside.core.sensitometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Stops;

/** On curves of known form; the published and closed-form ones stand beside their files. */
class CharacteristicCurveTest {
  private static final SoftplusShape SHAPE =
      new SoftplusShape(0.25, 0.60, -2.50, 0.12, -0.30, 0.25);
  private static final SpeedScale NO_SCALE = new SpeedScale(List.of());

  private static List<StepReading> steps(int count) {
    List<StepReading> steps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double logH = -3.40 + 0.15 * i;
      steps.add(StepReading.of(logH, Math.round(SHAPE.densityAt(logH) * 100) / 100.0));
    }
    return steps;
  }

  private static CharacteristicCurve curve(List<StepReading> steps) {
    return CharacteristicCurve.through(
        new CurveReadings(steps, Optional.of(OpticalDensity.of(0.25)), 0.01, true));
  }

  private static List<StepReading> with(List<StepReading> steps, int at, double density) {
    List<StepReading> changed = new ArrayList<>(steps);
    changed.set(at, new StepReading(steps.get(at).logExposure(), OpticalDensity.of(density)));
    return changed;
  }

  @Test
  void averagesWhatWasReadMoreThanOnce() {
    List<StepReading> steps = steps(21);
    steps.add(StepReading.of(-1.90, steps.get(10).density().value() + 0.02));

    assertThat(curve(steps).stepCount()).isEqualTo(21);
    assertThat(curve(steps).densityAt(-1.90).orElseThrow())
        .isCloseTo(steps.get(10).density().value() + 0.01, within(1e-9));
  }

  @Test
  void levelsSmallFallsOutAndSaysSo() {
    List<StepReading> steps = steps(21);
    double before = steps.get(9).density().value();
    CharacteristicCurve curve = curve(with(steps, 10, before - 0.02));

    assertThat(curve.moved()).hasSize(2);
    assertThat(curve.moved().get(0).taken()).isCloseTo(before - 0.01, within(1e-9));
    assertThat(curve(steps).moved()).isEmpty();
  }

  @Test
  void flagsAStepThatLiesOff() {
    List<StepReading> steps = steps(21);
    CharacteristicCurve curve = curve(with(steps, 12, steps.get(12).density().value() + 0.06));

    assertThat(curve(steps).outliers()).isEmpty();
    assertThat(curve.outliers())
        .singleElement()
        .satisfies(off -> assertThat(off.log10LuxSeconds()).isCloseTo(-1.60, within(1e-9)));
  }

  @Test
  void refusesDensitiesThatFallByFarAndTwoSteps() {
    List<StepReading> steps = steps(21);
    List<StepReading> reversed = new ArrayList<>();
    for (int i = 0; i < 21; i++) {
      reversed.add(new StepReading(steps.get(i).logExposure(), steps.get(20 - i).density()));
    }

    assertThatThrownBy(() -> curve(reversed))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("they fall");
    assertThatThrownBy(() -> curve(steps.subList(0, 2)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("at least 3 different exposures");
  }

  @Test
  void findsBasePlusFogWhereTheFirstStepsAreFlatAndAsksElsewhere() {
    CurveReadings open = new CurveReadings(steps(21), Optional.empty(), 0.01, false);
    CharacteristicCurve found = CharacteristicCurve.through(open);

    assertThat(found.baseFog().isFound()).isTrue();
    assertThat(found.baseFog().density().value()).isCloseTo(0.25, within(0.003));
    assertThatThrownBy(
            () ->
                CharacteristicCurve.through(
                    new CurveReadings(steps(21).subList(6, 21), Optional.empty(), 0.01, false)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("base plus fog");
  }

  @Test
  void neverReadsBeyondTheReadings() {
    CurveResults shortOne = curve(steps(13)).results(NO_SCALE, 1);

    assertThat(shortOne.get(Measure.LOG_HM).value()).isPresent();
    assertThat(shortOne.get(Measure.DELTA_D).value()).isEmpty();
    assertThat(shortOne.get(Measure.DELTA_D).remark()).contains("not determinable", "end at");
    assertThat(shortOne.get(Measure.CONTRAST_INDEX).value()).isEmpty();
    assertThat(shortOne.get(Measure.CONTRAST_INDEX).remark()).contains("1.10");
    assertThat(shortOne.condition()).isEqualTo(ContrastCondition.NOT_DETERMINABLE);
    assertThat(curve(steps(13)).densityAt(0)).isEmpty();
    assertThat(curve(steps(13)).logHFor(2)).isEmpty();
  }

  @Test
  void elevenStepsHaveNoBand() {
    CurveResults few = curve(steps(21).subList(5, 16)).results(NO_SCALE, 1);

    assertThat(few.get(Measure.LOG_HM).value()).isPresent();
    assertThat(few.get(Measure.LOG_HM).band()).isEmpty();
    assertThat(few.get(Measure.LOG_HM).remark()).contains("band not determinable", "12");
  }

  @Test
  void bandsAreRepeatableAndNoNarrowerThanTheRounding() {
    CurveResults results = curve(steps(21)).results(NO_SCALE, 1);
    Interval band = results.get(Measure.LOG_HM).band().orElseThrow();

    assertThat(results).isEqualTo(curve(steps(21)).results(NO_SCALE, 1));
    assertThat(band.holds(results.get(Measure.LOG_HM).value().orElseThrow())).isTrue();
    assertThat(band.high() - band.low()).isBetween(0.01, 0.08);
    assertThat(results.get(Measure.GAMMA).value().orElseThrow()).isCloseTo(0.59, within(0.02));
  }

  @Test
  void readingsRepeatedOnMostStepsGiveTheirOwnScatter() {
    List<StepReading> calm = new ArrayList<>(steps(21));
    List<StepReading> wild = new ArrayList<>(steps(21));
    for (StepReading step : steps(21)) {
      double density = step.density().value();
      calm.add(StepReading.of(step.logExposure().log10LuxSeconds(), density + 0.01));
      wild.add(StepReading.of(step.logExposure().log10LuxSeconds(), density + 0.06));
    }
    Interval narrow = curve(calm).results(NO_SCALE, 1).get(Measure.LOG_HM).band().orElseThrow();
    Interval wide = curve(wild).results(NO_SCALE, 1).get(Measure.LOG_HM).band().orElseThrow();

    assertThat(wide.high() - wide.low()).isGreaterThan(3 * (narrow.high() - narrow.low()));
  }

  @Test
  void theContrastIsCertainOnlyWhenItsBandLiesWithinTheLimits() {
    assertThat(condition(0.80, new Interval(0.76, 0.84))).isEqualTo(ContrastCondition.MET);
    assertThat(condition(0.76, new Interval(0.74, 0.78)))
        .isEqualTo(ContrastCondition.MET_NOT_CERTAIN);
    assertThat(condition(0.74, new Interval(0.72, 0.76))).isEqualTo(ContrastCondition.NOT_MET);
  }

  private static ContrastCondition condition(double deltaD, Interval band) {
    return ContrastCondition.of(
        new CurveResult(
            Measure.DELTA_D, java.util.OptionalDouble.of(deltaD), Optional.of(band), ""));
  }

  @Test
  void speedsRoundHalfAwayFromZero() {
    SpeedScale scale =
        new SpeedScale(
            List.of(new SpeedStep(200, 24, -2.44, -2.35), new SpeedStep(250, 25, -2.54, -2.45)));

    assertThat(scale.of(-2.4449).orElseThrow().iso()).isEqualTo(200);
    assertThat(scale.of(-2.445).orElseThrow().iso()).isEqualTo(250);
    assertThat(scale.of(-1.0)).isEmpty();
  }

  /** One stop is log10 2; the metered frame has 8/EI lux seconds (SE-S40). */
  @Test
  void exposuresOfTabletAndCamera() {
    assertThat(
            ExposureSeries.inCamera(
                ExposureIndex.of(400), List.of(Stops.of(-4), Stops.of(0), Stops.of(2))))
        .extracting(LogExposure::log10LuxSeconds)
        .satisfiesExactly(
            low -> assertThat(low).isCloseTo(Math.log10(0.02 / 16), within(1e-12)),
            metered -> assertThat(metered).isCloseTo(Math.log10(0.02), within(1e-12)),
            high -> assertThat(high).isCloseTo(Math.log10(0.08), within(1e-12)));
    assertThat(
            ExposureSeries.behindTablet(
                LogExposure.ofLog10LuxSeconds(-0.40), List.of(OpticalDensity.of(0.15))))
        .containsExactly(LogExposure.ofLog10LuxSeconds(-0.55));
  }
}
