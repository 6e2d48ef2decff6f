package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * A ruled field for a drawing: where a value of each axis lies, the lines of the grid and the marks
 * of the axes.
 *
 * @param width of the whole drawing
 * @param height of the whole drawing
 * @param left edge of the field
 * @param top edge
 * @param right edge
 * @param bottom edge
 * @param fromX least value along
 * @param toX greatest
 * @param fromY least value upwards
 * @param toY greatest
 */
public record Plot(
    double width,
    double height,
    double left,
    double top,
    double right,
    double bottom,
    double fromX,
    double toX,
    double fromY,
    double toY) {
  private static final double SLACK = 1e-9;

  /**
   * A mark of an axis.
   *
   * @param at where, along its axis
   * @param label what it says
   */
  public record Mark(double at, String label) {}

  /** A field in a drawing of that width; narrow ones are higher for their width. */
  static Plot of(double width, double fromX, double toX, double fromY, double toY, boolean low) {
    boolean narrow = width < 500;
    double deep = narrow ? (low ? 220 : 330) : (low ? 260 : 500);
    double left = narrow ? 40 : 58;
    double right = width - (narrow ? 50 : 78);
    return new Plot(width, deep + 64, left, 14, right, 14 + deep, fromX, toX, fromY, toY);
  }

  /** Where a value lies along. */
  double x(double value) {
    return tenth(left + (right - left) * (value - fromX) / (toX - fromX));
  }

  /** Where a value lies upwards. */
  double y(double value) {
    return tenth(bottom - (bottom - top) * (value - fromY) / (toY - fromY));
  }

  /** Whether the drawing is for a narrow sheet. */
  public boolean isNarrow() {
    return width < 500;
  }

  /** Lines of the grid at those values. */
  String grid(List<Mark> along, List<Mark> up) {
    StringBuilder path = new StringBuilder();
    along.forEach(
        mark ->
            path.append('M').append(mark.at()).append(' ').append(top).append('V').append(bottom));
    up.forEach(
        mark ->
            path.append('M').append(left).append(' ').append(mark.at()).append('H').append(right));
    return path.toString();
  }

  /** The two axes. */
  public String axes() {
    return "M" + left + " " + top + "V" + bottom + "H" + right;
  }

  /** Marks along, at whole steps. */
  List<Mark> along(double step, DoubleFunction<String> label) {
    List<Mark> marks = new ArrayList<>();
    for (long i = Math.round(Math.ceil(fromX / step - SLACK)); i * step <= toX + SLACK; i++) {
      marks.add(new Mark(x(i * step), label.apply(i * step)));
    }
    return marks;
  }

  /** Marks upwards, at whole steps. */
  List<Mark> up(double step, DoubleFunction<String> label) {
    List<Mark> marks = new ArrayList<>();
    for (long i = Math.round(Math.ceil(fromY / step - SLACK)); i * step <= toY + SLACK; i++) {
      marks.add(new Mark(y(i * step), label.apply(i * step)));
    }
    return marks;
  }

  /** The least of 1, 2, 4 or 5 times a power of ten that makes no more marks than that. */
  static double step(double span, int most) {
    double power = Math.pow(10, Math.floor(Math.log10(span / most)));
    for (double factor : new double[] {1, 2, 4, 5, 10, 20}) {
      if (span / (factor * power) <= most + SLACK) {
        return factor * power;
      }
    }
    return 20 * power;
  }

  /** One decimal with a real minus. */
  static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value == 0 ? 0.0 : value)
        .replace("-0.0", "0.0")
        .replace('-', '−');
  }

  /** A point of a path. */
  String point(double alongValue, double upValue) {
    return x(alongValue) + " " + y(upValue);
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
