package org.wetside.web.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The evening as a strip: one line per tank, one for the hands; left of the now-line printed, right
 * of it drawn.
 *
 * @param width of the drawing, in its own units
 * @param height of the drawing
 * @param nowX where the line stands
 * @param hours hour and half-hour lines
 * @param tanks base lines with the tank's name, the hands last
 * @param baths the baths
 * @param numbers the loads' numbers
 * @param hands strokes on the last line
 * @param limitX where the limit stands; null without one in sight
 * @param title one line
 * @param description the same facts in words
 */
public record EveningDrawing(
    double width,
    double height,
    double nowX,
    List<Hour> hours,
    List<Line> tanks,
    List<Bath> baths,
    List<Label> numbers,
    List<Stroke> hands,
    @Nullable Double limitX,
    String title,
    String description) {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final double TOP = 32;

  /** Half the room of a clock time; one nearer to the edge would be cut. */
  private static final double WORD_BESIDE = 22;

  /** A line of the clock; without words on the half hour. */
  public record Hour(double x, String words) {}

  /** A base line. */
  public record Line(double y, double textY, String words) {}

  /** A bath as a polygon. */
  public record Bath(String hatch, String points) {}

  /** Words at a place. */
  public record Label(double x, double y, String words) {}

  /** A stroke of the hands' line. */
  public record Stroke(double x, double y, double width, double height) {}

  /** What is drawn. */
  record Evening(List<EveningLoad> loads, Instant now, ZoneId zone, Optional<Instant> limit) {}

  /** Room for one tank, and where its name stands. */
  private record Shape(
      double width, double first, double row, double tall, double nameAbove, double hands) {}

  static EveningDrawing wide(Evening evening) {
    return draw(evening, new Shape(840, 98, 66, 38, 8, 50));
  }

  static EveningDrawing narrow(Evening evening) {
    return draw(evening, new Shape(358, 86, 66, 30, -17, 62));
  }

  private static EveningDrawing draw(Evening evening, Shape shape) {
    Instant from = from(evening);
    Instant to = to(evening, from);
    double perSecond = shape.width() / seconds(from, to);
    Map<String, Double> base = new LinkedHashMap<>();
    double y = shape.first();
    for (EveningLoad load : evening.loads()) {
      if (!base.containsKey(load.tank())) {
        base.put(load.tank(), y);
        y += shape.row();
      }
    }
    double handsY = y - shape.row() + shape.hands();
    List<Line> lines = new ArrayList<>();
    base.forEach((tank, at) -> lines.add(new Line(at, at - shape.nameAbove(), tank)));
    lines.add(new Line(handsY, handsY - (shape.nameAbove() > 0 ? 6 : 20), "Hands"));
    List<Bath> baths = new ArrayList<>();
    List<Label> numbers = new ArrayList<>();
    List<Stroke> hands = new ArrayList<>();
    for (EveningLoad load : evening.loads()) {
      double bottom = base.getOrDefault(load.tank(), shape.first());
      double top = bottom - shape.tall();
      numbers.add(
          new Label(round(seconds(from, load.begin()) * perSecond), top - 7, load.number()));
      for (EveningLoad.Shape bath : load.shapes()) {
        baths.add(new Bath(bath.hatch(), points(bath, from, perSecond, bottom, top)));
      }
      for (EveningLoad.Hand hand : load.hands()) {
        double x = round(seconds(from, hand.at()) * perSecond);
        hands.add(new Stroke(x, handsY - 16, hand.pour() ? 2.8 : 1.2, 16));
      }
    }
    Double limit =
        evening
            .limit()
            .filter(at -> !at.isAfter(to) && at.isAfter(from))
            .map(at -> round(seconds(from, at) * perSecond))
            .orElse(null);
    return new EveningDrawing(
        shape.width(),
        handsY + 4,
        round(seconds(from, evening.now()) * perSecond),
        hours(evening, from, to, perSecond),
        lines,
        baths,
        numbers,
        hands,
        limit,
        "The evening, by tank, at " + clock(evening, evening.now()),
        words(evening));
  }

  private static Instant from(Evening evening) {
    Instant first =
        evening.loads().stream()
            .map(EveningLoad::begin)
            .min(Instant::compareTo)
            .orElse(evening.now());
    Instant early = first.isBefore(evening.now()) ? first : evening.now();
    return early.minus(Duration.ofMinutes(15));
  }

  /** The now-line stands at 30 % where what is to come is long enough, never further right. */
  private static Instant to(Evening evening, Instant from) {
    Instant last =
        evening.loads().stream()
            .map(EveningLoad::end)
            .max(Instant::compareTo)
            .orElse(evening.now());
    Instant end =
        evening
            .limit()
            .filter(last::isBefore)
            .filter(at -> at.isBefore(last.plusSeconds(7200)))
            .orElse(last);
    Instant late = end.plus(Duration.ofMinutes(15));
    Duration before = Duration.between(from, evening.now());
    Instant third = evening.now().plus(before.multipliedBy(7).dividedBy(3));
    return late.isBefore(third) ? third : late;
  }

  private static List<Hour> hours(Evening evening, Instant from, Instant to, double perSecond) {
    List<Hour> hours = new ArrayList<>();
    ZonedDateTime at = from.atZone(evening.zone()).withMinute(0).withSecond(0).withNano(0);
    boolean crowded = Duration.between(from, to).toHours() > 5;
    for (; at.toInstant().isBefore(to); at = at.plusMinutes(30)) {
      if (at.toInstant().isAfter(from)) {
        double x = round(seconds(from, at.toInstant()) * perSecond);
        boolean worded =
            x > WORD_BESIDE && at.getMinute() == 0 && (!crowded || at.getHour() % 2 == 0);
        hours.add(new Hour(x, worded ? MINUTE.format(at) : ""));
      }
    }
    return hours;
  }

  private static String points(
      EveningLoad.Shape bath, Instant from, double perSecond, double bottom, double top) {
    return point(bath.begin(), from, perSecond, bottom)
        + point(bath.full(), from, perSecond, top)
        + point(bath.drain(), from, perSecond, top)
        + point(bath.end(), from, perSecond, bottom).stripTrailing();
  }

  private static String point(Instant at, Instant from, double perSecond, double y) {
    return round(seconds(from, at) * perSecond) + "," + y + " ";
  }

  private static String words(Evening evening) {
    StringBuilder words = new StringBuilder();
    for (EveningLoad load : evening.loads()) {
      words
          .append("Load ")
          .append(load.number())
          .append(" in ")
          .append(load.tank())
          .append(" from ")
          .append(clock(evening, load.begin()))
          .append(" to ")
          .append(clock(evening, load.end()))
          .append(". ");
    }
    evening.limit().ifPresent(at -> words.append("Your limit is ").append(clock(evening, at)));
    return words.toString().strip();
  }

  /** Top of the lines of the clock. */
  public double top() {
    return TOP;
  }

  private static String clock(Evening evening, Instant at) {
    return MINUTE.format(at.atZone(evening.zone()));
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 1000.0;
  }

  private static double round(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
