package org.wetside.web.wash;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.wash.InWash;
import org.wetside.core.wash.ResidueForecast;
import org.wetside.core.wash.TwoLiquids;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WaterChange;

/**
 * What stays on the film over the minutes of a wash, its logarithm upwards, drawn for a wide or a
 * narrow sheet.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param left where the axis of mass stands
 * @param bottom where the axis of time lies
 * @param limitY height of the limit
 * @param lines one for each half-time
 * @param fills where each fill is poured
 * @param decades marks of the axis of mass
 * @param minutes marks of the axis of time
 * @param description the same facts in words
 */
public record CourseDrawing(
    int width,
    int height,
    int left,
    int bottom,
    double limitY,
    List<Line> lines,
    List<Double> fills,
    List<Mark> decades,
    List<Mark> minutes,
    String description) {
  private static final int TOP = 14;
  private static final int DEEP = 300;
  private static final int LEFT = 74;
  private static final int RIGHT = 64;
  private static final int MOMENTS = 24;

  /** Below this nothing is drawn: the limit is far above it. */
  private static final double LEAST_G_M2 = 1e-5;

  /**
   * One half-time.
   *
   * @param name what it is
   * @param path of the line
   * @param endX where its name stands
   * @param endY likewise
   */
  public record Line(String name, String path, double endX, double endY) {}

  /**
   * A mark of an axis.
   *
   * @param at where
   * @param label what it says
   */
  public record Mark(double at, String label) {}

  static CourseDrawing of(WashForecast forecast, int width) {
    double start =
        InWash.straightFrom(forecast.question().start())
            .residue(forecast.question().carried())
            .gramsPerSquareMetre();
    Axes axes = new Axes(TimeSpan.toSeconds(forecast.inWater()), Math.log10(start) + 0.1, width);
    List<Line> lines = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (ResidueForecast one : forecast.byHalfTime()) {
      String name = Figure.of(TimeSpan.toSeconds(one.halfTime())) + " s";
      lines.add(line(forecast, one, name, axes));
      words
          .append("Half-time ")
          .append(name)
          .append(": at the end at least ")
          .append(Figure.of(one.atEnd().gramsPerSquareMetre()))
          .append(" g/m². ");
    }
    List<Double> fills = new ArrayList<>();
    double seconds = 0;
    for (WaterChange change : forecast.question().changes()) {
      fills.add(axes.x(seconds));
      seconds += TimeSpan.toSeconds(change.dwell());
    }
    double limit = forecast.limit().most().gramsPerSquareMetre();
    words.append("The limit is ").append(Figure.of(limit)).append(" g/m².");
    return new CourseDrawing(
        width,
        TOP + DEEP + 40,
        LEFT,
        TOP + DEEP,
        axes.y(limit),
        apart(lines),
        fills,
        axes.decades(),
        axes.minutes(),
        words.toString());
  }

  private static Line line(WashForecast forecast, ResidueForecast one, String name, Axes axes) {
    List<TwoLiquids.AtMoment> course =
        new TwoLiquids(forecast.question().carried(), one.halfTime())
            .course(forecast.question().start(), forecast.question().changes(), MOMENTS);
    StringBuilder path = new StringBuilder();
    double x = LEFT;
    double y = TOP;
    for (TwoLiquids.AtMoment moment : course) {
      double mass = moment.state().residue(forecast.question().carried()).gramsPerSquareMetre();
      x = axes.x(TimeSpan.toSeconds(moment.elapsed()));
      y = axes.y(Math.max(mass, LEAST_G_M2));
      path.append(path.isEmpty() ? "M" : "L").append(x).append(' ').append(y);
      if (mass < LEAST_G_M2) {
        break;
      }
    }
    return new Line(name, path.toString(), x, y);
  }

  /** Names that would stand on each other are moved apart. */
  private static List<Line> apart(List<Line> lines) {
    List<Line> moved = new ArrayList<>();
    for (Line line : lines) {
      double y = Math.min(line.endY(), TOP + DEEP - 8.0);
      for (Line before : moved) {
        if (Math.abs(before.endX() - line.endX()) < 60 && Math.abs(before.endY() - y) < 20) {
          y = before.endY() - 22;
        }
      }
      moved.add(new Line(line.name(), line.path(), line.endX(), y));
    }
    return List.copyOf(moved);
  }

  /** Seconds along, log10 of g/m² upwards. */
  private record Axes(double longestSeconds, double highest, int width) {
    double x(double seconds) {
      double along = longestSeconds == 0 ? 0 : seconds / longestSeconds;
      return tenth(LEFT + along * (width - LEFT - RIGHT));
    }

    double y(double mass) {
      double lowest = Math.log10(LEAST_G_M2);
      return tenth(TOP + DEEP * (highest - Math.log10(mass)) / (highest - lowest));
    }

    List<Mark> decades() {
      List<Mark> marks = new ArrayList<>();
      for (int power = (int) Math.round(Math.log10(LEAST_G_M2)); power <= highest; power++) {
        double mass = Math.pow(10, power);
        marks.add(
            new Mark(
                y(mass),
                power < -3
                    ? Figure.of(mass).replace("1·", "").replace("1.0·", "")
                    : Figure.of(mass)));
      }
      return marks;
    }

    List<Mark> minutes() {
      double minutes = longestSeconds / 60;
      double step = 0.5;
      for (double candidate : new double[] {0.5, 1, 2, 5, 10, 20, 60, 120, 300}) {
        step = candidate;
        if (minutes / candidate <= (width > 500 ? 10 : 5)) {
          break;
        }
      }
      List<Mark> marks = new ArrayList<>();
      for (double at = 0; at <= minutes + 1e-9; at += step) {
        String label = step < 1 ? String.format(Locale.ROOT, "%.1f", at) : Math.round(at) + "";
        marks.add(new Mark(x(at * 60), label));
      }
      return marks;
    }

    private static double tenth(double value) {
      return Math.round(value * 10) / 10.0;
    }
  }
}
