package org.wetside.core.sensitometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.OpticalDensity;

/** The band along a curve, on tablets simulated from a known one. */
class CurveBandTest {
  private static final SoftplusShape FILM = new SoftplusShape(0.25, 0.70, -2.50, 0.12, -0.30, 0.25);
  private static final double SD = 0.01;
  private static final int TABLETS = 40;

  private static CharacteristicCurve tablet(int steps, SplittableRandom random) {
    List<StepReading> read = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double logH = -3.40 + 3.0 * i / (steps - 1);
      read.add(StepReading.of(logH, FILM.densityAt(logH) + SD * random.nextGaussian()));
    }
    return CharacteristicCurve.through(
        new CurveReadings(read, Optional.of(OpticalDensity.of(FILM.base())), 0.001, false));
  }

  /** A band of 90 % holds the truth about so often; 87 % of these 840 are measured. */
  @Test
  void holdsTheTruthAboutAsOftenAsItSays() {
    SplittableRandom random = new SplittableRandom(1);
    int held = 0;
    int all = 0;
    for (int i = 0; i < TABLETS; i++) {
      for (BandPoint point : tablet(21, random).band(1)) {
        all++;
        held += point.density().holds(FILM.densityAt(point.log10LuxSeconds())) ? 1 : 0;
      }
    }
    assertThat(all).isEqualTo(TABLETS * 21);
    assertThat((double) held / all).isBetween(0.86, 0.94);
  }

  @Test
  void isTheSameForTheSameSeed() {
    CharacteristicCurve curve = tablet(21, new SplittableRandom(2));
    assertThat(curve.band(7)).isEqualTo(curve.band(7)).isNotEqualTo(curve.band(8));
  }

  @Test
  void isNoneWithFewerThanTwelveSteps() {
    assertThat(tablet(11, new SplittableRandom(3)).band(1)).isEmpty();
  }
}
