package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.CurveReadings;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.sensitometry.SoftplusShape;
import org.wetside.core.sensitometry.StepReading;

/**
 * Curves with exact answers: rows A, B and C of checks/synthetic_results.csv (source CH-S99), from
 * their formulas and from the 21 steps of checks/synthetic_curves.csv.
 */
class SyntheticCurvesTest {
  private static final Map<String, DoubleUnaryOperator> FORMULAS =
      Map.of(
          "A", x -> 0.20 + Math.max(0, 0.62 * (x + 2.80)),
          "B", SoftplusShape.withoutShoulder(0.20, 0.65, -2.50, 0.12)::densityAt,
          "C", new SoftplusShape(0.25, 0.70, -2.50, 0.12, -0.30, 0.25)::densityAt);
  private static final Map<String, String> COLUMNS =
      Map.of("A", "a_hinge", "B", "b_softplus", "C", "c_with_shoulder");

  static Stream<ReferenceRow> answers() {
    return ReferenceTable.open("checks/synthetic_results").rows().stream();
  }

  private static CurveResults read(List<StepReading> readings, ReferenceRow answer, double step) {
    return CharacteristicCurve.through(
            new CurveReadings(
                readings, Optional.of(OpticalDensity.of(answer.number("base_fog"))), step, true))
        .results(StandardSpeeds.open(), 1);
  }

  private static double value(CurveResults results, Measure measure) {
    return results.get(measure).value().orElseThrow();
  }

  private static void agree(
      CurveResults found,
      ReferenceRow answer,
      double logHm,
      double deltaD,
      double gradient,
      double index) {
    assertThat(value(found, Measure.LOG_HM)).isCloseTo(answer.number("log10_hm"), within(logHm));
    assertThat(value(found, Measure.DELTA_D))
        .isCloseTo(answer.number("delta_d_1_30"), within(deltaD));
    assertThat(value(found, Measure.AVERAGE_GRADIENT))
        .isCloseTo(answer.number("gradient_1_50"), within(gradient));
    assertThat(value(found, Measure.CONTRAST_INDEX))
        .isCloseTo(answer.number("contrast_index"), within(index));
  }

  @ParameterizedTest
  @MethodSource("answers")
  void fromTheFormulaToSixDigits(ReferenceRow answer) {
    DoubleUnaryOperator formula = Objects.requireNonNull(FORMULAS.get(answer.text("curve")));
    List<StepReading> readings = new ArrayList<>();
    for (int i = 0; i <= 550; i++) {
      double logH = -4.5 + i / 100.0;
      readings.add(StepReading.of(logH, formula.applyAsDouble(logH)));
    }
    CurveResults found = read(readings, answer, 0);

    agree(found, answer, 1e-6, 1e-6, 1e-6, 1e-6);
    assertThat(value(found, Measure.EXPOSURE_INDEX))
        .isCloseTo(answer.number("speed"), within(1e-3));
    assertThat(value(found, Measure.DELTA_X)).isCloseTo(answer.number("delta_x"), within(1e-6));
    assertThat(value(found, Measure.SPEED_DELTA_X))
        .isCloseTo(answer.number("speed_delta_x"), within(1e-3));
  }

  @ParameterizedTest
  @MethodSource("answers")
  void fromTheStepsUnrounded(ReferenceRow answer) {
    CurveResults found = read(steps(answer, 1e6), answer, 1e-6);

    agree(found, answer, 0.001, 0.001, 0.001, 0.001);
  }

  @ParameterizedTest
  @MethodSource("answers")
  void fromTheStepsRoundedToAHundredth(ReferenceRow answer) {
    CurveResults found = read(steps(answer, 100), answer, 0.01);

    agree(found, answer, 0.015, 0.009, 0.007, 0.004);
  }

  /** The condition holds for A only, of B and C one lies within and one beyond the limits. */
  @ParameterizedTest
  @MethodSource("answers")
  void isIsoOnlyWhereTheContrastIs(ReferenceRow answer) {
    CurveResults found = read(steps(answer, 1e6), answer, 1e-6);
    boolean contrast = answer.number("delta_d_1_30") <= 0.85;

    assertThat(found.condition().isMet()).isEqualTo(contrast);
    assertThat(found.isoSpeed().isPresent()).isEqualTo(contrast);
    found
        .isoSpeed()
        .ifPresent(
            speed -> assertThat(speed.degrees()).isEqualTo((int) answer.number("iso_degrees")));
  }

  private static List<StepReading> steps(ReferenceRow answer, double parts) {
    String column = Objects.requireNonNull(COLUMNS.get(answer.text("curve")));
    return ReferenceTable.open("checks/synthetic_curves").rows().stream()
        .map(
            row ->
                StepReading.of(
                    row.number("log10_h"), Math.round(row.number(column) * parts) / parts))
        .toList();
  }
}
