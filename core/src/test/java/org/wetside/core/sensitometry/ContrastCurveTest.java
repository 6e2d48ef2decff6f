package org.wetside.core.sensitometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContrastCurveTest {
  /** TECHNIDOL series as printed: P-255 p.10-11, row CI09 (source DV-S08). */
  private static final List<ContrastPoint> PRINTED =
      List.of(
          new ContrastPoint(300, 0.50, 0.003),
          new ContrastPoint(420, 0.60, 0.003),
          new ContrastPoint(540, 0.65, 0.003),
          new ContrastPoint(660, 0.70, 0.003));

  @Test
  void passesThroughThePrintedPointsBothWays() {
    ContrastCurve curve = ContrastCurve.through(PRINTED);
    for (ContrastPoint point : PRINTED) {
      assertThat(curve.contrastAt(point.seconds()).orElseThrow())
          .isCloseTo(point.contrast(), within(1e-12));
      assertThat(curve.secondsFor(point.contrast()).orElseThrow())
          .isCloseTo(point.seconds(), within(1e-6));
    }
  }

  @Test
  void neverReadsBeyondItsEnds() {
    ContrastCurve curve = ContrastCurve.through(PRINTED);
    assertThat(curve.contrastAt(299)).isEmpty();
    assertThat(curve.contrastAt(661)).isEmpty();
    assertThat(curve.secondsFor(0.49)).isEmpty();
    assertThat(curve.secondsFor(0.71)).isEmpty();
  }

  @Test
  void averagesRepeatedTimesAndSaysWhatWasMoved() {
    ContrastCurve curve =
        ContrastCurve.through(
            List.of(
                new ContrastPoint(300, 0.50, 0.02),
                new ContrastPoint(360, 0.62, 0.02),
                new ContrastPoint(360, 0.58, 0.02),
                new ContrastPoint(420, 0.56, 0.02),
                new ContrastPoint(480, 0.70, 0.02)));
    // 0.60 (mean of two, weight 2) and 0.56 pool to (2 × 0.60 + 0.56) / 3
    assertThat(curve.contrastAt(360).orElseThrow()).isCloseTo(1.76 / 3, within(1e-12));
    assertThat(curve.contrastAt(420).orElseThrow()).isCloseTo(1.76 / 3, within(1e-12));
    assertThat(curve.moved()).hasSize(2);
  }

  @Test
  void refusesOneTimeAlone() {
    assertThatThrownBy(() -> ContrastCurve.through(PRINTED.subList(0, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two different times");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void neverFallsWhateverThePoints(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<ContrastPoint> points = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      points.add(
          new ContrastPoint(
              60 + random.nextInt(1200), 0.2 + random.nextDouble(), 0.01 + random.nextDouble()));
    }
    ContrastCurve curve = ContrastCurve.through(points);
    double before = 0;
    for (double s = curve.firstSeconds(); s <= curve.lastSeconds(); s += 1) {
      double now = curve.contrastAt(s).orElseThrow();
      assertThat(now).isGreaterThanOrEqualTo(before - 1e-9);
      before = now;
    }
  }

  @Test
  void bandIsRepeatableHoldsTheTimeAndIsOpenAtAnEnd() {
    ContrastTime time = ContrastTime.of(PRINTED, 0.62, 7).orElseThrow();
    assertThat(time).isEqualTo(ContrastTime.of(PRINTED, 0.62, 7).orElseThrow());
    assertThat(time.lowSeconds().orElseThrow()).isLessThan(time.seconds());
    assertThat(time.highSeconds().orElseThrow()).isGreaterThan(time.seconds());
    assertThat(time.missedBelow() + time.missedAbove()).isZero();
    ContrastTime atTheEnd = ContrastTime.of(PRINTED, 0.70, 7).orElseThrow();
    assertThat(atTheEnd.missedAbove()).isBetween(0.4, 0.6);
    assertThat(atTheEnd.highSeconds()).isEmpty();
    assertThat(atTheEnd.lowSeconds().orElseThrow()).isLessThan(660);
    assertThat(ContrastTime.of(PRINTED, 0.80, 7)).isEmpty();
  }
}
