package org.wetside.web.times;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The answer and its neighbours as bars over a logarithmic axis of time, drawn for a wide or a
 * narrow sheet.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param axisY where the axis runs
 * @param bars the bands, the answer first
 * @param ticks marks of the axis
 * @param description the same facts in words
 */
public record BandsDrawing(
    int width, int height, int axisY, List<Bar> bars, List<Tick> ticks, String description) {
  private static final int FIRST_Y = 66;
  private static final int BAR = 26;
  private static final int ROW = 66;

  /**
   * One band.
   *
   * @param kind class of the style sheet: answer, other, bench
   * @param name what it is
   * @param time minutes and seconds
   * @param x left end
   * @param wide length
   * @param at where the time lies
   * @param y upper edge
   * @param labelX where the words under it begin or end
   * @param anchor start or end
   */
  public record Bar(
      String kind,
      String name,
      String time,
      double x,
      double wide,
      double at,
      int y,
      double labelX,
      String anchor) {

    /** Below it, for text under it. */
    public int underY() {
      return y + BAR + 20;
    }
  }

  /**
   * A mark of the axis.
   *
   * @param x where
   * @param label minutes and seconds; empty for a small mark
   */
  public record Tick(double x, String label) {}

  /**
   * The space between two bands that do not touch.
   *
   * @param from its left end
   * @param to its right end
   * @param y height of the other band's middle
   * @param answerY lower edge of the answer's band
   * @param riseX which end rises to the answer
   */
  public record Gap(double from, double to, int y, int answerY, double riseX) {}

  /** The space between the answer and its first neighbour; null when they touch. */
  public @Nullable Gap gap() {
    if (bars.size() < 2 || bars.get(1).kind().equals("bench")) {
      return null;
    }
    Bar answer = bars.get(0);
    Bar other = bars.get(1);
    int y = other.y() + BAR / 2;
    if (other.x() + other.wide() < answer.x()) {
      return new Gap(other.x() + other.wide(), answer.x(), y, answer.y() + BAR, answer.x());
    }
    double end = answer.x() + answer.wide();
    return other.x() > end ? new Gap(end, other.x(), y, answer.y() + BAR, end) : null;
  }

  /** What one bar shows: a time with its band, in seconds. */
  record Shown(String kind, String name, double seconds, double low, double high) {}

  static BandsDrawing of(List<Shown> shown, int width) {
    double low = shown.stream().mapToDouble(Shown::low).min().orElse(60);
    double high = shown.stream().mapToDouble(Shown::high).max().orElse(600);
    double margin = 0.06 * Math.log(high / low);
    Axis axis = new Axis(Math.log(low) - margin, Math.log(high) + margin, width);
    List<Bar> bars = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < shown.size(); i++) {
      Shown one = shown.get(i);
      double x = axis.x(one.low());
      bars.add(
          new Bar(
              one.kind(),
              one.name(),
              clock(one.seconds()),
              x,
              round(axis.x(one.high()) - x),
              axis.x(one.seconds()),
              FIRST_Y + i * ROW,
              axis.at(one) > width * 0.6 ? round(axis.x(one.high())) : x,
              axis.at(one) > width * 0.6 ? "end" : "start"));
      words
          .append(one.name())
          .append(' ')
          .append(clock(one.seconds()))
          .append(", from ")
          .append(clock(one.low()))
          .append(" to ")
          .append(clock(one.high()))
          .append(". ");
    }
    int axisY = FIRST_Y + shown.size() * ROW;
    return new BandsDrawing(
        width, axisY + 34, axisY, bars, axis.ticks(low, high), words.toString().strip());
  }

  /** Logarithmic: equal ratios are equal lengths. */
  private record Axis(double lnLow, double lnHigh, int width) {
    double x(double seconds) {
      return round((Math.log(seconds) - lnLow) / (lnHigh - lnLow) * width);
    }

    double at(Shown one) {
      return x(one.seconds());
    }

    List<Tick> ticks(double low, double high) {
      int enough = width > 500 ? 7 : 5;
      int step = 15;
      for (int candidate : new int[] {15, 30, 60, 120, 300, 600, 1800}) {
        step = candidate;
        if ((high - low) / candidate <= enough) {
          break;
        }
      }
      List<Tick> ticks = new ArrayList<>();
      for (double at = Math.ceil(low / step) * step; at <= high; at += step) {
        double x = x(at);
        boolean room = x > 24 && x < width - 24;
        ticks.add(new Tick(x, room ? clock(at) : ""));
      }
      return ticks;
    }
  }

  private static double round(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static String clock(double seconds) {
    long whole = Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }
}
