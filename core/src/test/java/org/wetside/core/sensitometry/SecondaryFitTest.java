package org.wetside.core.sensitometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SecondaryFitTest {
  private static final SoftplusShape SHAPE =
      new SoftplusShape(0.25, 0.70, -2.50, 0.12, -0.30, 0.25);
  private static final int STEPS = 21;

  private static double[] exposures() {
    double[] logH = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      logH[i] = -3.40 + 0.15 * i;
    }
    return logH;
  }

  private static double[] densities(SoftplusShape shape, double sd, SplittableRandom random) {
    double[] logH = exposures();
    double[] density = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      density[i] = shape.densityAt(logH[i]) + sd * random.nextGaussian();
    }
    return density;
  }

  @Test
  void findsTheFormulaBehindExactDensities() {
    SecondaryFit fit =
        SecondaryFit.of(exposures(), densities(SHAPE, 0, new SplittableRandom(1))).orElseThrow();

    assertThat(fit.parameterCount()).isEqualTo(6);
    assertThat(fit.shape().slope()).isCloseTo(0.70, within(1e-4));
    assertThat(fit.shape().toe()).isCloseTo(-2.50, within(1e-4));
    assertThat(fit.residualSd()).isLessThan(1e-6);
  }

  /** At a scatter as small as that of rounding to 0.01 there is one least and both find it. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void resamplesComeToTheSameWhereverTheSearchBegins(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SecondaryFit fit = SecondaryFit.of(exposures(), densities(SHAPE, 0.003, random)).orElseThrow();
    for (int i = 0; i < 300; i++) {
      double[] resample = densities(fit.shape(), 0.003, random);
      double[] near = fit.again(resample).orElseThrow().fitted();
      double[] afresh = fit.afresh(resample).orElseThrow().fitted();
      assertThat(near).containsExactly(afresh, within(1e-6));
    }
  }

  /**
   * Where the shoulder lies within the steps the sum of squares has two valleys, and the way from
   * the fit without a shoulder led into the shallower one.
   */
  @Test
  void theTabletsOwnFitRestsInTheDeeperValley() {
    SoftplusShape early = new SoftplusShape(0.25, 0.70, -2.50, 0.12, -1.0, 0.25);
    SplittableRandom random = new SplittableRandom(1);
    int compared = 0;
    for (int tablet = 0; tablet < 200; tablet++) {
      double[] density = densities(early, 0.01, random);
      SecondaryFit fit = SecondaryFit.of(exposures(), density).orElseThrow();
      Optional<SecondaryFit> afresh = fit.afresh(density);
      if (afresh.isPresent()) {
        compared++;
        assertThat(squares(fit, density))
            .as("tablet %d", tablet)
            .isLessThan(squares(afresh.get(), density) * (1 + 1e-9));
      }
    }
    // a search from nothing seldom comes to no rest
    assertThat(compared).isGreaterThan(190);
  }

  private static double squares(SecondaryFit fit, double[] density) {
    double squares = 0;
    double[] fitted = fit.fitted();
    for (int i = 0; i < density.length; i++) {
      squares += (density[i] - fitted[i]) * (density[i] - fitted[i]);
    }
    return squares;
  }

  /** The derivatives against differences. */
  @Test
  void derivativesAreThoseOfTheFormula() {
    double[] at = {0.25, 0.70, -2.50, Math.log(0.12), -0.30, Math.log(0.25)};
    SoftplusModel model = new SoftplusModel();
    double[] gradient = new double[6];
    double[] ignored = new double[6];
    for (double x : new double[] {-3.2, -2.45, -1.0, -0.3, 0.4}) {
      model.value(x, at, gradient);
      for (int i = 0; i < at.length; i++) {
        double[] more = at.clone();
        double[] less = at.clone();
        more[i] += 1e-6;
        less[i] -= 1e-6;
        double slope = (model.value(x, more, ignored) - model.value(x, less, ignored)) / 2e-6;
        assertThat(gradient[i]).as("parameter %d at %s", i, x).isCloseTo(slope, within(1e-7));
      }
    }
  }
}
