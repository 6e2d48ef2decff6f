package org.wetside.web.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.core.learning.ControlChart;

/**
 * The control chart: every roll by how far it lies from what was expected of it, in standard
 * deviations, with the limits, drawn for a wide or a narrow sheet. Too little development is up.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param left where the rolls begin
 * @param right where they end
 * @param bottom under the lowest line
 * @param lines limits and middle
 * @param pen the line through the rolls
 * @param points the rolls
 * @param caption what is drawn, under it
 * @param description the same facts in words
 */
public record ChartDrawing(
    int width,
    int height,
    int left,
    int right,
    int bottom,
    List<Line> lines,
    String pen,
    List<Point> points,
    String caption,
    String description) {
  private static final int TOP = 16;
  private static final int DEEP = 260;
  private static final int LEFT = 44;
  private static final int RIGHT = 12;
  private static final int UNDER = 58;
  private static final int WIDE_ENOUGH = 500;
  private static final int MOST_WIDE = 24;
  private static final int MOST_NARROW = 10;

  /** What lies beyond is drawn at the edge; the table says where it is. */
  private static final double FARTHEST = 4.5;

  /**
   * A line across.
   *
   * @param y its height
   * @param kind axis, grid or limit
   * @param label what stands before it
   */
  public record Line(double y, String kind, String label) {}

  /**
   * A roll.
   *
   * @param x along
   * @param y height
   * @param roll its number; empty where there is no room for it
   * @param flagged whether it raises the flag
   * @param changed whether something had changed before it
   */
  public record Point(double x, double y, String roll, boolean flagged, boolean changed) {}

  static ChartDrawing of(List<LearnedView.ChartPointView> chart, int width) {
    int most = width > WIDE_ENOUGH ? MOST_WIDE : MOST_NARROW;
    List<LearnedView.ChartPointView> shown =
        chart.subList(Math.max(0, chart.size() - most), chart.size());
    double step = (width - LEFT - RIGHT) / (double) Math.max(shown.size(), 1);
    int named = Math.max(1, (int) Math.ceil(62 / step));
    List<Point> points = new ArrayList<>();
    StringBuilder pen = new StringBuilder();
    for (int i = 0; i < shown.size(); i++) {
      LearnedView.ChartPointView roll = shown.get(i);
      double x = tenth(LEFT + (i + 0.5) * step);
      double y = y(roll.sigmas());
      pen.append(i == 0 ? "M" : "L").append(x).append(' ').append(y);
      boolean flagged = !roll.drift().isEmpty();
      points.add(
          new Point(
              x,
              y,
              (shown.size() - 1 - i) % named == 0 ? roll.roll() : "",
              flagged,
              !roll.changed().isEmpty()));
    }
    return new ChartDrawing(
        width,
        TOP + DEEP + UNDER,
        LEFT,
        width - RIGHT,
        TOP + DEEP,
        limits(),
        pen.toString(),
        points,
        width > WIDE_ENOUGH
            ? "standard deviations from what was expected; up: too little development"
            : "up: too little development",
        description(shown));
  }

  private static List<Line> limits() {
    return List.of(
        new Line(y(ControlChart.ACTION), "limit", "+3"),
        new Line(y(ControlChart.WARNING), "grid", "+2"),
        new Line(y(0), "axis", "0"),
        new Line(y(-ControlChart.WARNING), "grid", "−2"),
        new Line(y(-ControlChart.ACTION), "limit", "−3"));
  }

  private static String description(List<LearnedView.ChartPointView> shown) {
    StringBuilder words =
        new StringBuilder(
            "Rolls in the order of their development, by how many standard deviations each lies"
                + " from what was expected of it; up is too little development. Limits at 3, and at"
                + " 2 for two of three rolls on one side.");
    for (LearnedView.ChartPointView roll : shown) {
      words.append(
          String.format(
              Locale.ROOT,
              " %s: %+.1f%s%s.",
              roll.roll(),
              roll.sigmas(),
              roll.drift().isEmpty() ? "" : ", " + roll.drift(),
              roll.changed().isEmpty() ? "" : ", changed " + String.join(", ", roll.changed())));
    }
    return words.toString();
  }

  private static double y(double sigmas) {
    double held = Math.max(-FARTHEST, Math.min(FARTHEST, sigmas));
    return tenth(TOP + DEEP * (FARTHEST - held) / (2 * FARTHEST));
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
