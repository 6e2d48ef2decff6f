package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * The time for a wanted contrast with its band.
 *
 * @param seconds the time
 * @param lowSeconds 5 % of the draws are shorter
 * @param highSeconds 5 % of the draws are longer
 * @param openBelow share of the draws whose curve starts above the wanted contrast [-]
 * @param openAbove share of the draws whose curve ends below it [-]
 */
public record ContrastTime(
    double seconds, double lowSeconds, double highSeconds, double openBelow, double openAbove) {
  private static final int DRAWS = 1000;

  /**
   * Reads the curve backwards; the band comes from 1,000 seeded draws of the points, each made
   * monotone and read backwards.
   *
   * @return empty when the wanted contrast lies beyond the points
   */
  public static java.util.Optional<ContrastTime> of(
      List<ContrastPoint> points, double wanted, long seed) {
    OptionalDouble seconds = ContrastCurve.through(points).secondsFor(wanted);
    if (seconds.isEmpty()) {
      return java.util.Optional.empty();
    }
    SplittableRandom random = new SplittableRandom(seed);
    double[] drawn = new double[DRAWS];
    int hits = 0;
    int below = 0;
    int above = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      List<ContrastPoint> moved = new ArrayList<>();
      for (ContrastPoint point : points) {
        double contrast = point.contrast() + point.sd() * random.nextGaussian();
        moved.add(new ContrastPoint(point.seconds(), Math.max(contrast, 1e-6), point.sd()));
      }
      ContrastCurve curve = ContrastCurve.through(moved);
      OptionalDouble time = curve.secondsFor(wanted);
      if (time.isPresent()) {
        drawn[hits++] = time.getAsDouble();
      } else if (curve.contrastAt(curve.firstSeconds()).orElseThrow() > wanted) {
        below++;
      } else {
        above++;
      }
    }
    double[] sorted = Arrays.copyOf(drawn, hits);
    Arrays.sort(sorted);
    double low = hits == 0 ? seconds.getAsDouble() : sorted[(int) (0.05 * (hits - 1))];
    double high = hits == 0 ? seconds.getAsDouble() : sorted[(int) Math.ceil(0.95 * (hits - 1))];
    return java.util.Optional.of(
        new ContrastTime(
            seconds.getAsDouble(), low, high, below / (double) DRAWS, above / (double) DRAWS));
  }
}
