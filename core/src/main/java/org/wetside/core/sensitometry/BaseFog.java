package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;

/**
 * Density of base plus fog and how it is known.
 *
 * @param density the density
 * @param steps how many of the first steps it is the mean of; 0 when it was given
 */
public record BaseFog(OpticalDensity density, int steps) {
  /** Over the first stop of exposure... */
  private static final double FLAT_LOG10 = 0.30;

  /** ... the readings of film that saw nothing lie within this density of each other. */
  private static final double FLAT_DENSITY = 0.02;

  private static final int FEWEST_STEPS = 3;
  private static final double SLACK = 1e-9;

  /** Whether it was read off the first steps of the curve. */
  public boolean isFound() {
    return steps > 0;
  }

  static BaseFog of(CurveReadings readings, Steps steps) {
    return readings.baseFog().map(given -> new BaseFog(given, 0)).orElseGet(() -> found(steps));
  }

  /** For densities drawn anew: the same mean over them, or what was given. */
  double in(double[] density) {
    return steps == 0 ? this.density.value() : Steps.mean(density, steps);
  }

  private static BaseFog found(Steps steps) {
    int end = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    while (end < steps.size() && steps.logH()[end] - steps.logH()[0] <= FLAT_LOG10 + SLACK) {
      least = Math.min(least, steps.density()[end]);
      most = Math.max(most, steps.density()[end]);
      end++;
    }
    if (end < FEWEST_STEPS || most - least > FLAT_DENSITY + SLACK) {
      throw new BadValueException(
          "base plus fog",
          "not given",
          "read a clear, unexposed part of this film and give it: the first steps are not flat"
              + " enough to find it (three within the first 0.30 of log H, within 0.02 of each"
              + " other)");
    }
    return new BaseFog(OpticalDensity.of(Steps.mean(steps.density(), end)), end);
  }
}
