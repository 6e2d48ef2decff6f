package org.wetside.core.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;

/**
 * The temperature of a bath along its own clock: straight between what is known, as it was before
 * the first, and after the last either as the bath drifts or as it was.
 *
 * @param known at least one, in order of time, no two at one moment
 * @param afterwards how it goes on after the last; empty when it is taken to stay
 */
public record BathCurve(List<TimedReading> known, Optional<Drift> afterwards) {
  /** A drift is followed in straight pieces: short ones, where it bends. */
  private static final double LONGEST_PIECE_S = 5;

  private static final double PIECES_PER_TIME_CONSTANT = 100;

  /** A bath that has drifted for so many time constants has arrived. */
  private static final double ARRIVED = 20;

  private static final double LONGEST_S = 4 * 3600;

  public BathCurve {
    known = List.copyOf(known);
    if (known.isEmpty()) {
      throw new IllegalArgumentException("a bath's curve needs one temperature");
    }
  }

  /** A point of the curve: seconds on the bath's clock, degrees Celsius. */
  record Point(double seconds, double celsius) {}

  /** The temperature at that many seconds of the bath's clock. */
  public Temperature at(double seconds) {
    TimedReading last = known.get(known.size() - 1);
    double since = seconds - TimeSpan.toSeconds(last.elapsed());
    if (since >= 0) {
      return afterwards
          .map(drift -> drift.after(last.temperature(), TimeSpan.ofSeconds(since)))
          .orElse(last.temperature());
    }
    List<Point> points = readings();
    Point before = points.get(0);
    for (Point point : points) {
      if (point.seconds() >= seconds) {
        double along =
            point.seconds() == before.seconds()
                ? 0
                : (seconds - before.seconds()) / (point.seconds() - before.seconds());
        double inside = Math.max(0, along);
        return Temperature.ofCelsius(
            before.celsius() + inside * (point.celsius() - before.celsius()));
      }
      before = point;
    }
    return last.temperature();
  }

  /** The same as straight pieces; before the first and after the last point it stays. */
  List<Point> pieces() {
    List<Point> points = readings();
    Point last = points.get(points.size() - 1);
    afterwards.ifPresent(drift -> follow(drift, last, points));
    return points;
  }

  private List<Point> readings() {
    List<Point> points = new ArrayList<>();
    for (TimedReading one : known) {
      points.add(new Point(TimeSpan.toSeconds(one.elapsed()), one.temperature().celsius()));
    }
    return points;
  }

  private static void follow(Drift drift, Point from, List<Point> points) {
    double tau = TimeSpan.toSeconds(drift.timeConstant());
    double piece = Math.min(LONGEST_PIECE_S, tau / PIECES_PER_TIME_CONSTANT);
    double end = Math.min(ARRIVED * tau, LONGEST_S);
    Temperature start = Temperature.ofCelsius(from.celsius());
    for (double after = piece; after <= end; after += piece) {
      Temperature then = drift.after(start, TimeSpan.ofSeconds(after));
      points.add(new Point(from.seconds() + after, then.celsius()));
    }
  }
}
