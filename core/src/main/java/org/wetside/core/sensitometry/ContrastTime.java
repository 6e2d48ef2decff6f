package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * The time for a wanted contrast with its band of 90 %. A draw whose curve begins above the wanted
 * contrast stands for a time shorter than any, one whose curve ends below it for a longer one: when
 * more than 5 % of the draws miss on a side, the band is open there.
 *
 * @param seconds the time
 * @param lowSeconds 5 % of the draws are shorter; empty when the band is open on that side
 * @param highSeconds 5 % of the draws are longer; empty when the band is open on that side
 * @param missedBelow share of the draws whose curve begins above the wanted contrast [-]
 * @param missedAbove share of the draws whose curve ends below it [-]
 */
public record ContrastTime(
    double seconds,
    OptionalDouble lowSeconds,
    OptionalDouble highSeconds,
    double missedBelow,
    double missedAbove) {
  private static final int DRAWS = 1000;
  private static final double TAIL = 0.05;

  /** A drawn contrast stays above 0. */
  private static final double LEAST_CONTRAST = 1e-6;

  /**
   * Reads the curve backwards; the band comes from 1,000 seeded draws of the points, each made
   * monotone and read backwards.
   *
   * @return empty when the wanted contrast lies beyond the points
   */
  public static Optional<ContrastTime> of(List<ContrastPoint> points, double wanted, long seed) {
    OptionalDouble seconds = ContrastCurve.through(points).secondsFor(wanted);
    if (seconds.isEmpty()) {
      return Optional.empty();
    }
    SplittableRandom random = new SplittableRandom(seed);
    double[] drawn = new double[DRAWS];
    int below = 0;
    int above = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      ContrastCurve curve = ContrastCurve.through(drawn(points, random));
      OptionalDouble time = curve.secondsFor(wanted);
      if (time.isPresent()) {
        drawn[draw] = time.getAsDouble();
      } else if (curve.leastContrast() > wanted) {
        drawn[draw] = Double.NEGATIVE_INFINITY;
        below++;
      } else {
        drawn[draw] = Double.POSITIVE_INFINITY;
        above++;
      }
    }
    Arrays.sort(drawn);
    return Optional.of(
        new ContrastTime(
            seconds.getAsDouble(),
            closed(drawn[(int) (TAIL * DRAWS)]),
            closed(drawn[(int) ((1 - TAIL) * DRAWS) - 1]),
            below / (double) DRAWS,
            above / (double) DRAWS));
  }

  private static List<ContrastPoint> drawn(List<ContrastPoint> points, SplittableRandom random) {
    List<ContrastPoint> drawn = new ArrayList<>();
    for (ContrastPoint point : points) {
      double contrast = point.contrast() + point.sd() * random.nextGaussian();
      drawn.add(new ContrastPoint(point.seconds(), Math.max(contrast, LEAST_CONTRAST), point.sd()));
    }
    return drawn;
  }

  private static OptionalDouble closed(double seconds) {
    return Double.isInfinite(seconds) ? OptionalDouble.empty() : OptionalDouble.of(seconds);
  }
}
