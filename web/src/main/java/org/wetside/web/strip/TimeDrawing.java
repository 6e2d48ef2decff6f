package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.sensitometry.ContrastCurve;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.sensitometry.CurveResult;
import org.wetside.core.sensitometry.SpeedAtTime;
import org.wetside.core.sensitometry.TimeForN;

/**
 * Something of a family over its development times, with bands, drawn for a wide or a narrow sheet.
 *
 * @param plot the field
 * @param grid its lines
 * @param along marks of minutes
 * @param up marks of what is shown
 * @param name what is shown
 * @param line through the points
 * @param second a second line, thinner; empty without one
 * @param bars the band of each point
 * @param dots the points
 * @param wanted lines from a wanted value to its time; empty where nothing is wanted
 * @param labels what those say
 * @param title of the drawing
 * @param description the same facts in words
 */
public record TimeDrawing(
    Plot plot,
    String grid,
    List<Plot.Mark> along,
    List<Plot.Mark> up,
    String name,
    String line,
    String second,
    String bars,
    List<CurveDrawing.Dot> dots,
    String wanted,
    List<Label> labels,
    String title,
    String description) {
  private static final double NINETY = 1.645;
  private static final int PIECES = 60;
  private static final int MOST_MARKS = 8;

  /**
   * Words in the drawing.
   *
   * @param x where
   * @param y where
   * @param text what
   */
  public record Label(double x, double y, String text) {}

  /** A value with its band at a time, in minutes. */
  private record Point(double minutes, double low, double value, double high) {}

  /** Contrast against time, with the times for N − 2 to N + 2; at least two times. */
  static TimeDrawing contrast(FamilyAnswer family, String title, double width) {
    List<Point> points = new ArrayList<>();
    for (ContrastPoint one : family.contrast()) {
      double half = NINETY * one.sd();
      points.add(
          new Point(
              Digits.minutes(one.seconds()),
              one.contrast() - half,
              one.contrast(),
              one.contrast() + half));
    }
    Plot plot = plot(points, width);
    ContrastCurve curve = ContrastCurve.through(family.contrast());
    StringBuilder line = new StringBuilder();
    for (int i = 0; i <= PIECES; i++) {
      double seconds =
          curve.firstSeconds() + (curve.lastSeconds() - curve.firstSeconds()) * i / PIECES;
      OptionalDouble contrast = curve.contrastAt(seconds);
      if (contrast.isPresent()) {
        line.append(line.isEmpty() ? "M" : "L")
            .append(plot.point(Digits.minutes(seconds), contrast.getAsDouble()));
      }
    }
    StringBuilder wanted = new StringBuilder();
    List<Label> labels = new ArrayList<>();
    StringBuilder words = new StringBuilder("Nothing is read outside the points.");
    for (TimeForN one : family.times()) {
      one.time()
          .ifPresent(
              time -> {
                double x = plot.x(Digits.minutes(time.seconds()));
                double y = plot.y(one.gradient());
                wanted.append("M").append(plot.left()).append(' ').append(y).append('H').append(x);
                wanted.append('V').append(plot.bottom());
                labels.add(new Label(x + 6, plot.bottom() - 8, FamilyText.n(one.n())));
                words
                    .append(' ')
                    .append(FamilyText.n(one.n()))
                    .append(": ")
                    .append(Digits.two(one.gradient()))
                    .append(" at ")
                    .append(Digits.clock(time.seconds()))
                    .append('.');
              });
    }
    return drawn(
        plot,
        points,
        family.aim().measure().words(),
        line.toString(),
        "",
        wanted.toString(),
        labels,
        title,
        words.toString());
  }

  /** Both speeds against time: fixed density 0.10, and thinner the one by ΔX. */
  static TimeDrawing speed(List<SpeedAtTime> speeds, String title, double width) {
    List<Point> fixed = points(speeds, true);
    List<Point> deltaX = points(speeds, false);
    List<Point> all = new ArrayList<>(fixed);
    all.addAll(deltaX);
    Plot plot = plot(all, width);
    return drawn(
        plot,
        fixed,
        "exposure index",
        path(fixed, plot),
        path(deltaX, plot),
        "",
        List.of(),
        title,
        "The thick line is the exposure index at fixed density 0.10, the thin one the speed by ΔX."
            + " All values are in the table below.");
  }

  private static List<Point> points(List<SpeedAtTime> speeds, boolean fixed) {
    List<Point> points = new ArrayList<>();
    for (SpeedAtTime one : speeds) {
      CurveResult result = fixed ? one.fixedDensity() : one.byDeltaX();
      result
          .value()
          .ifPresent(
              value ->
                  points.add(
                      new Point(
                          Digits.minutes(TimeSpan.toSeconds(one.time())),
                          result.band().map(band -> Math.max(0, band.low())).orElse(value),
                          value,
                          result.band().map(band -> band.high()).orElse(value))));
    }
    points.sort(Comparator.comparingDouble(Point::minutes));
    return points;
  }

  private static String path(List<Point> points, Plot plot) {
    StringBuilder path = new StringBuilder();
    for (Point point : points) {
      path.append(path.isEmpty() ? "M" : "L").append(plot.point(point.minutes(), point.value()));
    }
    return path.toString();
  }

  private static Plot plot(List<Point> points, double width) {
    double first = points.stream().mapToDouble(Point::minutes).min().orElseThrow();
    double last = points.stream().mapToDouble(Point::minutes).max().orElseThrow();
    double low = points.stream().mapToDouble(Point::low).min().orElseThrow();
    double high = points.stream().mapToDouble(Point::high).max().orElseThrow();
    double step = Plot.step(Math.max(high - low, 0.05), 6);
    double minutes = Plot.step(last - first, width < 500 ? 4 : MOST_MARKS);
    return Plot.of(
        width,
        Math.max(0, Math.floor((first - minutes / 2) / minutes) * minutes),
        Math.ceil((last + minutes / 2) / minutes) * minutes,
        Math.max(0, Math.floor((low - step / 2) / step) * step),
        Math.ceil((high + step / 2) / step) * step,
        true);
  }

  private static TimeDrawing drawn(
      Plot plot,
      List<Point> points,
      String name,
      String line,
      String second,
      String wanted,
      List<Label> labels,
      String title,
      String description) {
    double stepX = Plot.step(plot.toX() - plot.fromX(), plot.isNarrow() ? 5 : MOST_MARKS + 2);
    double stepY = Plot.step(plot.toY() - plot.fromY(), MOST_MARKS);
    List<Plot.Mark> along = plot.along(stepX, minutes -> Digits.clock(minutes * 60));
    List<Plot.Mark> up =
        plot.up(stepY, value -> stepY >= 1 ? String.valueOf(Math.round(value)) : Digits.two(value));
    StringBuilder bars = new StringBuilder();
    List<CurveDrawing.Dot> dots = new ArrayList<>();
    for (Point point : points) {
      double x = plot.x(point.minutes());
      dots.add(new CurveDrawing.Dot(x, plot.y(point.value())));
      double low = plot.y(point.low());
      double high = plot.y(point.high());
      bars.append("M").append(x).append(' ').append(low).append('V').append(high);
      bars.append("M").append(x - 5).append(' ').append(low).append("h10");
      bars.append("M").append(x - 5).append(' ').append(high).append("h10");
    }
    return new TimeDrawing(
        plot,
        plot.grid(along, up),
        along,
        up,
        name,
        line,
        second,
        bars.toString(),
        dots,
        wanted,
        labels,
        title,
        description);
  }
}
