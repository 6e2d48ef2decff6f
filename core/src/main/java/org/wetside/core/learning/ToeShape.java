package org.wetside.core.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How film goes from clear to its straight part: net density against exposure, counted in stops
 * from where it has the net density of the speed point, 0.10. From published curves; straight
 * between their points, never beyond.
 */
public final class ToeShape {
  /** Net density of the speed point [-]; ISO 6 (SE-S01, SE-S02). */
  public static final double SPEED_POINT = 0.10;

  /** Net densities at which curves are read and averaged [-]. */
  private static final double[] READ_AT = {0.04, 0.07, 0.10, 0.13, 0.17, 0.22, 0.30};

  private final double[] stops;

  private ToeShape(double[] stops) {
    this.stops = stops;
  }

  /**
   * A point of a published curve.
   *
   * @param logExposure log10 of the exposure, in any unit
   * @param net density above the first reading of its curve [-]
   */
  public record Point(double logExposure, double net) {}

  /**
   * The mean of several curves.
   *
   * @param curves each with its points in order of exposure, from clear film to beyond 0.30
   */
  public static ToeShape mean(List<List<Point>> curves) {
    double[] stops = new double[READ_AT.length];
    for (List<Point> curve : curves) {
      double speed = exposure(curve, SPEED_POINT);
      for (int i = 0; i < READ_AT.length; i++) {
        stops[i] +=
            (exposure(curve, READ_AT[i]) - speed) / ReferencePair.LOG_PER_STOP / curves.size();
      }
    }
    return new ToeShape(stops);
  }

  private static double exposure(List<Point> curve, double net) {
    List<Point> points = new ArrayList<>(curve);
    points.sort(Comparator.comparingDouble(Point::logExposure));
    for (int i = 1; i < points.size(); i++) {
      Point low = points.get(i - 1);
      Point high = points.get(i);
      if (low.net() <= net && net <= high.net() && high.net() > low.net()) {
        double share = (net - low.net()) / (high.net() - low.net());
        return low.logExposure() + share * (high.logExposure() - low.logExposure());
      }
    }
    throw new IllegalArgumentException("a curve does not pass net density " + net);
  }

  /**
   * How many stops more light than the speed point has made this net density; negative for less.
   *
   * @return empty outside the densities that were read, 0.04 to 0.30
   */
  public OptionalDouble stopsAt(double net) {
    for (int i = 1; i < READ_AT.length; i++) {
      if (READ_AT[i - 1] <= net && net <= READ_AT[i]) {
        double share = (net - READ_AT[i - 1]) / (READ_AT[i] - READ_AT[i - 1]);
        return OptionalDouble.of(stops[i - 1] + share * (stops[i] - stops[i - 1]));
      }
    }
    return OptionalDouble.empty();
  }

  /** Least net density that can be told [-]. */
  public static double thinnest() {
    return READ_AT[0];
  }

  /** Stops for each unit of net density there, for what a reading's error is worth. */
  double stopsPerDensity(double net) {
    double low = Math.max(net - 0.01, READ_AT[0]);
    double high = Math.min(net + 0.01, READ_AT[READ_AT.length - 1]);
    return (stopsAt(high).orElseThrow() - stopsAt(low).orElseThrow()) / (high - low);
  }
}
