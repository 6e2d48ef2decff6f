package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.BandPoint;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.Outlier;
import org.wetside.core.sensitometry.StepReading;

/**
 * Characteristic curves, density over log exposure, drawn for a wide or a narrow sheet: one with
 * its readings and what is read off it, or a family.
 *
 * @param plot the field
 * @param grid its lines
 * @param along marks of log exposure
 * @param up marks of density
 * @param alongName what lies along
 * @param traces the curves
 * @param edges lower and upper edge of the main curve's band; empty when there is none
 * @param dots the readings of the main curve
 * @param off those that lie off the smooth curve
 * @param reading what is read off the main curve; empty for a family
 * @param title of the drawing
 * @param description the same facts in words
 */
public record CurveDrawing(
    Plot plot,
    String grid,
    List<Plot.Mark> along,
    List<Plot.Mark> up,
    String alongName,
    List<Trace> traces,
    List<String> edges,
    List<Dot> dots,
    List<Dot> off,
    Optional<SpeedTriangle> reading,
    String title,
    String description) {
  /** For a wide sheet. */
  static final double WIDE = 840;

  /** For a narrow one. */
  static final double NARROW = 358;

  private static final int PIECES = 90;
  private static final double AIR = 0.1;
  private static final double STEP_Y = 0.2;
  private static final double STEP_X = 0.2;

  /**
   * A curve.
   *
   * @param path of it
   * @param label at its end
   * @param endX where the label stands
   * @param endY likewise
   */
  public record Trace(String path, String label, double endX, double endY) {}

  /**
   * A reading.
   *
   * @param x where
   * @param y where
   */
  public record Dot(double x, double y) {}

  /** One strip with everything that is read off it. */
  static CurveDrawing of(
      ReadCurve.Answer answer, String label, boolean absolute, String title, double width) {
    CharacteristicCurve curve = answer.curve();
    Plot plot = plot(List.of(curve), width);
    List<Dot> dots = new ArrayList<>();
    for (StepReading step : curve.steps()) {
      dots.add(
          new Dot(plot.x(step.logExposure().log10LuxSeconds()), plot.y(step.density().value())));
    }
    List<Dot> off = new ArrayList<>();
    for (Outlier outlier : curve.outliers()) {
      off.add(new Dot(plot.x(outlier.log10LuxSeconds()), plot.y(outlier.read())));
    }
    SpeedTriangle reading = SpeedTriangle.of(answer, plot);
    return drawn(
        plot,
        List.of(trace(curve, label, plot)),
        edges(curve.band(answer.results().seed()), plot),
        dots,
        off,
        Optional.of(reading),
        absolute,
        title,
        reading.description()
            + " Dotted beside the curve: its band of 90 %, where there is one."
            + " All values are in the tables below.");
  }

  /** A family without readings: the curves by their times. */
  static CurveDrawing family(
      List<CharacteristicCurve> curves,
      List<String> labels,
      boolean absolute,
      String title,
      double width) {
    Plot plot = plot(curves, width);
    List<Trace> traces = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      traces.add(trace(curves.get(i), labels.get(i), plot));
    }
    return drawn(
        plot,
        apart(traces),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        absolute,
        title,
        "Density over log exposure, one curve for each of the times "
            + String.join(", ", labels)
            + ". Their results are in the table below.");
  }

  private static CurveDrawing drawn(
      Plot plot,
      List<Trace> traces,
      List<String> edges,
      List<Dot> dots,
      List<Dot> off,
      Optional<SpeedTriangle> reading,
      boolean absolute,
      String title,
      String description) {
    int every = Math.max(1, (int) Math.ceil((plot.toX() - plot.fromX()) / STEP_X / 8));
    List<Plot.Mark> lines = plot.along(STEP_X, Plot::one);
    List<Plot.Mark> heights = plot.up(STEP_Y, Plot::one);
    return new CurveDrawing(
        plot,
        plot.grid(lines, heights),
        plot.along(STEP_X * every * (plot.isNarrow() ? 2 : 1), Plot::one),
        plot.up(2 * STEP_Y, Plot::one),
        absolute ? "log exposure, lux seconds" : "log exposure, relative",
        traces,
        edges,
        dots,
        off,
        reading,
        title,
        description);
  }

  private static List<String> edges(List<BandPoint> band, Plot plot) {
    return band.isEmpty()
        ? List.of()
        : List.of(
            edge(band, point -> point.density().low(), plot),
            edge(band, point -> point.density().high(), plot));
  }

  private static String edge(List<BandPoint> band, ToDoubleFunction<BandPoint> density, Plot plot) {
    StringBuilder path = new StringBuilder();
    for (BandPoint point : band) {
      path.append(path.length() == 0 ? "M" : "L")
          .append(plot.point(point.log10LuxSeconds(), density.applyAsDouble(point)));
    }
    return path.toString();
  }

  private static Plot plot(List<CharacteristicCurve> curves, double width) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    double low = 0;
    double high = 0;
    for (CharacteristicCurve curve : curves) {
      from = Math.min(from, curve.firstLogH());
      to = Math.max(to, curve.lastLogH());
      for (StepReading step : curve.steps()) {
        low = Math.min(low, step.density().value());
        high = Math.max(high, step.density().value());
      }
    }
    return Plot.of(
        width,
        Math.floor((from - AIR) / STEP_X) * STEP_X,
        Math.ceil((to + AIR) / STEP_X) * STEP_X,
        Math.floor(low / STEP_Y) * STEP_Y,
        Math.ceil((high + AIR) / STEP_Y) * STEP_Y,
        false);
  }

  private static Trace trace(CharacteristicCurve curve, String label, Plot plot) {
    StringBuilder path = new StringBuilder();
    double first = curve.firstLogH();
    double span = curve.lastLogH() - first;
    double end = 0;
    for (int i = 0; i <= PIECES; i++) {
      double at = i == PIECES ? curve.lastLogH() : first + span * i / PIECES;
      double density = curve.densityAt(at).orElse(end);
      path.append(i == 0 ? "M" : "L").append(plot.point(at, density));
      end = density;
    }
    return new Trace(path.toString(), label, plot.x(curve.lastLogH()) + 8, plot.y(end) + 6);
  }

  /** Labels that would stand on each other are moved apart, the upper ones up. */
  private static List<Trace> apart(List<Trace> traces) {
    List<Trace> sorted = new ArrayList<>(traces);
    sorted.sort(java.util.Comparator.comparingDouble(Trace::endY).reversed());
    List<Trace> moved = new ArrayList<>();
    double last = Double.POSITIVE_INFINITY;
    for (Trace trace : sorted) {
      double y = Math.min(trace.endY(), last - 20);
      moved.add(new Trace(trace.path(), trace.label(), trace.endX(), y));
      last = y;
    }
    return moved;
  }
}
