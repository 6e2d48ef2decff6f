package org.wetside.core.wash;

import java.time.Duration;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;

/**
 * How much longer film takes to wash in cold water: published for prints, between the points
 * printed the logarithm goes straight. Warmer than the warmest point nothing is gained, because
 * nothing is printed for it.
 *
 * @param points from the warmest, at which nothing is added, to the coldest; at least two
 */
public record ColdWater(List<Point> points) {
  /** Softened gelatine is damaged above it (common practice). */
  private static final Temperature WARMEST = Temperature.ofCelsius(40);

  /**
   * One temperature.
   *
   * @param water of the wash
   * @param times by which half-times are longer there, at least 1
   */
  public record Point(Temperature water, double times) {}

  public ColdWater {
    points = List.copyOf(points);
  }

  /**
   * By which half-times are longer in water of that temperature, dimensionless.
   *
   * @throws BadValueException colder than anything printed, or above 40 °C
   */
  public double times(Temperature water) {
    Point coldest = points.get(points.size() - 1);
    if (water.compareTo(coldest.water()) < 0 || water.compareTo(WARMEST) > 0) {
      throw new BadValueException(
          "temperature of the wash water",
          water.toString(),
          "between "
              + Math.round(coldest.water().celsius() * 10) / 10.0
              + " and "
              + Math.round(WARMEST.celsius())
              + " °C; nothing is published beyond");
    }
    Point warmer = points.get(0);
    if (water.compareTo(warmer.water()) >= 0) {
      return warmer.times();
    }
    for (Point colder : points) {
      if (water.compareTo(colder.water()) >= 0) {
        double along =
            warmer.water().minus(water).kelvins() / warmer.water().minus(colder.water()).kelvins();
        return warmer.times() * Math.pow(colder.times() / warmer.times(), along);
      }
      warmer = colder;
    }
    return coldest.times();
  }

  /** A half-time in water of that temperature. */
  public Duration lengthened(HalfTime halfTime, Temperature water) {
    return TimeSpan.ofSeconds(TimeSpan.toSeconds(halfTime.ordinary()) * times(water));
  }
}
