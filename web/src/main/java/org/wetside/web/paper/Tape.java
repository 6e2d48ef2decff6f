package org.wetside.web.paper;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The run as a strip: where each bath lies, where the lid may come off, and the clock beneath.
 *
 * @param shapes the baths
 * @param lidOffMm where the lid may come off; 0 when it may all along, the whole width when never
 * @param letters bottles or words, at the middle of their baths
 * @param clock times of the clock, at their places
 */
public record Tape(List<Shape> shapes, double lidOffMm, List<Label> letters, List<Label> clock) {
  /** How wide the strip is drawn. */
  static final double WIDTH_MM = 150;

  private static final double ROOM_FOR_LETTER_MM = 8;
  private static final double ROOM_FOR_CLOCK_MM = 14;
  private static final int MOST_TIMES = 9;
  private static final int[] STEPS_MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 240, 480};

  /** Keeps unmodifiable copies. */
  public Tape {
    shapes = List.copyOf(shapes);
    letters = List.copyOf(letters);
    clock = List.copyOf(clock);
  }

  /** A bath: poured, full, drained, next pour, in millimetres from the left. */
  record Shape(String hatch, boolean wet, double begin, double full, double drain, double end) {}

  /** Words in the middle of that place. */
  public record Label(double atMm, String words) {}

  static Tape of(SheetView sheet, SheetWords words) {
    Instant start = Instant.parse(sheet.startAt());
    Instant end = Instant.parse(sheet.endAt());
    double perSecond = WIDTH_MM / Math.max(1, seconds(start, end));
    List<Shape> shapes = new ArrayList<>();
    List<Label> letters = new ArrayList<>();
    double lid = 0;
    for (SheetView.SheetStep step : sheet.steps()) {
      Shape shape =
          new Shape(
              step.hatch(),
              step.wet(),
              seconds(start, Instant.parse(step.beginAt())) * perSecond,
              seconds(start, Instant.parse(step.fullAt())) * perSecond,
              seconds(start, Instant.parse(step.drainAt())) * perSecond,
              seconds(start, Instant.parse(step.endAt())) * perSecond);
      shapes.add(shape);
      lid = step.dark() ? shape.end() : lid;
      String label =
          step.bottle() == null ? step.word().toLowerCase(java.util.Locale.ROOT) : step.bottle();
      if (shape.drain() - shape.full() > Math.max(ROOM_FOR_LETTER_MM, 2.2 * label.length())) {
        letters.add(new Label((shape.full() + shape.drain()) / 2, label));
      }
    }
    return new Tape(
        shapes, lid, letters, clock(start, end, perSecond, ZoneId.of(sheet.zone()), words));
  }

  private static List<Label> clock(
      Instant start, Instant end, double perSecond, ZoneId zone, SheetWords words) {
    int step = step(seconds(start, end) / 60);
    List<Label> labels = new ArrayList<>();
    labels.add(new Label(0, words.minute(start.toString())));
    ZonedDateTime at = start.atZone(zone).truncatedTo(ChronoUnit.DAYS);
    while (!at.toInstant().isAfter(start)) {
      at = at.plusMinutes(step);
    }
    for (; !at.toInstant().isAfter(end); at = at.plusMinutes(step)) {
      double x = seconds(start, at.toInstant()) * perSecond;
      if (x > ROOM_FOR_CLOCK_MM) {
        labels.add(new Label(x, words.minute(at.toInstant().toString())));
      }
    }
    return labels;
  }

  private static int step(double minutes) {
    for (int step : STEPS_MINUTES) {
      if (minutes / step <= MOST_TIMES) {
        return step;
      }
    }
    return STEPS_MINUTES[STEPS_MINUTES.length - 1];
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 1000.0;
  }
}
