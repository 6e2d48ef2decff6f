package org.wetside.core.thermal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.thermal.BathCurve.Point;

/**
 * How far a developer has come: the integral of its rate over the time it was in the tank, in
 * seconds at the reference temperature. Complete when it equals the planned time.
 *
 * <p>Outside the span of the rate nothing is known of it: such a stretch counts as planned, and is
 * reported as not known. The integral over a straight piece is exact; a drift is followed in pieces
 * short enough for 0.1 s in two hours.
 */
public final class DevelopmentDose {
  private final DevelopmentRate rate;
  private final BathCurve curve;
  private final List<Piece> pieces;

  /** Along a bath's temperature, by a developer's rate. */
  public DevelopmentDose(DevelopmentRate rate, BathCurve curve) {
    this.rate = rate;
    this.curve = curve;
    this.pieces = cut(curve.pieces());
  }

  /** From one moment to another the temperature is straight, and all in the span or all outside. */
  private record Piece(
      double from, double to, double fromCelsius, double toCelsius, boolean known) {
    double slope() {
      return to > from && !Double.isInfinite(to) ? (toCelsius - fromCelsius) / (to - from) : 0;
    }
  }

  /** The bath's temperature, as it went and as it is expected to go. */
  public BathCurve curve() {
    return curve;
  }

  /** The rate it is reckoned by. */
  public DevelopmentRate rate() {
    return rate;
  }

  /** Reached that long after the tank was full, in time at the reference temperature. */
  public Duration reached(Duration elapsed) {
    double until = TimeSpan.toSeconds(elapsed);
    double sum = 0;
    for (Piece piece : pieces) {
      if (piece.from() < until) {
        sum += over(piece, Math.min(piece.to(), until) - piece.from());
      }
    }
    return TimeSpan.ofSeconds(sum);
  }

  /** How much of that time lies outside the span of the rate. */
  public Duration notKnown(Duration elapsed) {
    double until = TimeSpan.toSeconds(elapsed);
    double sum = 0;
    for (Piece piece : pieces) {
      if (!piece.known() && piece.from() < until) {
        sum += Math.min(piece.to(), until) - piece.from();
      }
    }
    return TimeSpan.ofSeconds(sum);
  }

  /** When it is complete, from tank full. */
  public Duration completeAfter(Duration planned) {
    double missing = TimeSpan.toSeconds(planned);
    for (Piece piece : pieces) {
      double whole = over(piece, piece.to() - piece.from());
      if (whole >= missing) {
        return TimeSpan.ofSeconds(piece.from() + timeFor(piece, missing));
      }
      missing -= whole;
    }
    throw new IllegalStateException("the last piece has no end");
  }

  /** The integral over the first seconds of a piece. */
  private double over(Piece piece, double seconds) {
    if (!piece.known()) {
      return seconds;
    }
    double first = rate.at(piece.fromCelsius());
    double growth = rate.betaPerKelvin() * piece.slope();
    return growth == 0 ? first * seconds : first * Math.expm1(growth * seconds) / growth;
  }

  /** How long a piece takes for a dose that it reaches. */
  private double timeFor(Piece piece, double dose) {
    if (!piece.known()) {
      return dose;
    }
    double first = rate.at(piece.fromCelsius());
    double growth = rate.betaPerKelvin() * piece.slope();
    return growth == 0 ? dose / first : Math.log1p(growth * dose / first) / growth;
  }

  private List<Piece> cut(List<Point> points) {
    List<Piece> cut = new ArrayList<>();
    Point first = points.get(0);
    if (first.seconds() > 0) {
      add(cut, new Point(0, first.celsius()), first);
    }
    for (int i = 1; i < points.size(); i++) {
      addSpans(cut, points.get(i - 1), points.get(i));
    }
    Point last = points.get(points.size() - 1);
    add(cut, last, new Point(Double.POSITIVE_INFINITY, last.celsius()));
    return cut;
  }

  /** A straight stretch, parted where it enters or leaves the span. */
  private void addSpans(List<Piece> cut, Point from, Point to) {
    Point at = from;
    for (double edge : edges(from, to)) {
      double along = (edge - from.celsius()) / (to.celsius() - from.celsius());
      Point crossing = new Point(from.seconds() + along * (to.seconds() - from.seconds()), edge);
      add(cut, at, crossing);
      at = crossing;
    }
    add(cut, at, to);
  }

  /** The edges of the span strictly between two temperatures, in the order they are met. */
  private double[] edges(Point from, Point to) {
    double low = rate.span().low().celsius();
    double high = rate.span().high().celsius();
    boolean rising = to.celsius() > from.celsius();
    double least = Math.min(from.celsius(), to.celsius());
    double most = Math.max(from.celsius(), to.celsius());
    return DoubleStream.of(rising ? low : high, rising ? high : low)
        .filter(edge -> edge > least && edge < most)
        .toArray();
  }

  private void add(List<Piece> cut, Point from, Point to) {
    double middle = (from.celsius() + to.celsius()) / 2;
    boolean known =
        middle >= rate.span().low().celsius() - 1e-9
            && middle <= rate.span().high().celsius() + 1e-9;
    if (to.seconds() > from.seconds()) {
      cut.add(new Piece(from.seconds(), to.seconds(), from.celsius(), to.celsius(), known));
    }
  }
}
