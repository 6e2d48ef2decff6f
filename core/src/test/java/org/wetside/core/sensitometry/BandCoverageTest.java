package org.wetside.core.sensitometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.OpticalDensity;

/**
 * Whether bands of 90 % hold the truth in nine of ten simulated tablets of 21 steps. Truths are
 * drawn from the softplus-with-shoulder family: curve C of the synthetic curves, each parameter ±20
 * %.
 */
class BandCoverageTest {
  private static final SoftplusShape CENTRE =
      new SoftplusShape(0.25, 0.70, -2.50, 0.12, -0.30, 0.25);
  private static final List<Measure> JUDGED =
      List.of(Measure.LOG_HM, Measure.DELTA_D, Measure.AVERAGE_GRADIENT, Measure.CONTRAST_INDEX);
  private static final int STEPS = 21;
  private static final SpeedScale NO_SCALE = new SpeedScale(List.of());

  /** How many bands there were and how many held the truth. */
  private static final class Count {
    private int bands;
    private int held;

    double share() {
      return held / (double) bands;
    }

    @Override
    public String toString() {
      return String.format("%.1f %% of %d", 100 * share(), bands);
    }
  }

  private interface Truths {
    DoubleUnaryOperator next(SplittableRandom random);
  }

  private static DoubleUnaryOperator ofTheFamily(SplittableRandom random) {
    return new SoftplusShape(
            CENTRE.base() * around(random),
            CENTRE.slope() * around(random),
            CENTRE.toe() * around(random),
            CENTRE.toeWidth() * around(random),
            CENTRE.shoulder() * around(random),
            CENTRE.shoulderWidth() * around(random))
        ::densityAt;
  }

  /** A toe that is an exponential and not a softplus: another shape. */
  private static DoubleUnaryOperator ofAnotherShape(SplittableRandom random) {
    double slope = 0.70 * around(random);
    double toe = -2.50 * around(random);
    double width = 0.25 * around(random);
    return x -> {
      double from = x - toe;
      double rise = from <= 0 ? 0 : from - width * -Math.expm1(-from / width);
      return 0.25 + slope * rise;
    };
  }

  private static double around(SplittableRandom random) {
    return 0.8 + 0.4 * random.nextDouble();
  }

  private static Map<Measure, Count> cover(Truths truths, int tablets, double sd) {
    SplittableRandom random = new SplittableRandom(20260101);
    Map<Measure, Count> counts = new EnumMap<>(Measure.class);
    JUDGED.forEach(measure -> counts.put(measure, new Count()));
    for (int tablet = 0; tablet < tablets; tablet++) {
      DoubleUnaryOperator truth = truths.next(random);
      CurveResults exact = exact(truth);
      CurveResults found = read(noisy(truth, sd, random), truth.applyAsDouble(-9), tablet);
      for (Measure measure : JUDGED) {
        Optional<Interval> band = found.get(measure).band();
        if (band.isPresent() && exact.get(measure).value().isPresent()) {
          Count count = Objects.requireNonNull(counts.get(measure));
          count.bands++;
          count.held += band.get().holds(exact.get(measure).value().getAsDouble()) ? 1 : 0;
        }
      }
    }
    return counts;
  }

  private static List<StepReading> noisy(
      DoubleUnaryOperator truth, double sd, SplittableRandom random) {
    List<StepReading> readings = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      double logH = -3.40 + 0.15 * i;
      readings.add(StepReading.of(logH, truth.applyAsDouble(logH) + sd * random.nextGaussian()));
    }
    return readings;
  }

  private static CurveResults read(List<StepReading> readings, double baseFog, long seed) {
    return CharacteristicCurve.through(
            new CurveReadings(readings, Optional.of(OpticalDensity.of(baseFog)), 1e-6, false))
        .results(NO_SCALE, seed);
  }

  /** From steps so fine that reading adds nothing, and without bands. */
  private static CurveResults exact(DoubleUnaryOperator truth) {
    double[] logH = new double[241];
    double[] density = new double[logH.length];
    for (int i = 0; i < logH.length; i++) {
      logH[i] = -3.60 + 0.015 * i;
      density[i] = truth.applyAsDouble(logH[i]);
    }
    double[] read =
        CurveReader.read(
            MonotoneCubic.through(logH, density), logH, density, truth.applyAsDouble(-9));
    List<CurveResult> results = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      double value = read[measure.place()];
      results.add(
          new CurveResult(
              measure,
              Double.isNaN(value)
                  ? java.util.OptionalDouble.empty()
                  : java.util.OptionalDouble.of(value),
              Optional.empty(),
              ""));
    }
    return new CurveResults(
        results, ContrastCondition.NOT_DETERMINABLE, Optional.empty(), List.of(), 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.02})
  void holdTheTruthInAboutNineOfTen(double sd) {
    Map<Measure, Count> counts = cover(BandCoverageTest::ofTheFamily, 200, sd);

    assertThat(counts)
        .allSatisfy(
            (measure, count) ->
                assertThat(count.share()).as(measure.words()).isBetween(0.82, 0.97));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.02})
  @Tag("long")
  void holdTheTruthInNineOfTen(double sd) {
    Map<Measure, Count> counts = cover(BandCoverageTest::ofTheFamily, 2000, sd);
    System.out.println("bands, sd " + sd + ": " + counts);

    assertThat(counts)
        .allSatisfy(
            (measure, count) ->
                assertThat(count.share()).as(measure.words()).isBetween(0.87, 0.93));
  }

  @Test
  @Tag("long")
  void ofAnotherShapeIsPrintedNotAsserted() {
    for (double sd : new double[] {0.01, 0.02}) {
      Map<Measure, Count> counts = cover(BandCoverageTest::ofAnotherShape, 2000, sd);
      System.out.println("bands of another shape, sd " + sd + ": " + counts);
      assertThat(Objects.requireNonNull(counts.get(Measure.LOG_HM)).bands).isGreaterThan(1000);
    }
  }
}
