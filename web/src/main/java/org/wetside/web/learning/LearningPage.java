package org.wetside.web.learning;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.Days;

/**
 * Model of the page of what was learned.
 *
 * @param sheet the sheet
 * @param learned what was learned
 * @param wide the chart for a wide sheet; null while there are no rolls
 * @param narrow the chart for a phone; null with it
 * @param days words for days
 */
public record LearningPage(
    Sheet sheet,
    LearnedView learned,
    @Nullable ChartDrawing wide,
    @Nullable ChartDrawing narrow,
    Days days) {
  private static final int WIDE = 840;
  private static final int NARROW = 358;

  static LearningPage of(Sheet sheet, LearnedView learned, Days days) {
    boolean none = learned.chart().isEmpty();
    return new LearningPage(
        sheet,
        learned,
        none ? null : ChartDrawing.of(learned.chart(), WIDE),
        none ? null : ChartDrawing.of(learned.chart(), NARROW),
        days);
  }

  /** The lesson that is offered and not in use yet, the one of most rolls; null when none is. */
  public LearnedView.@Nullable LessonView offered() {
    LearnedView.LessonView best = null;
    for (LearnedView.LessonView lesson : learned.lessons()) {
      boolean open = lesson.factor() != null && lesson.inUse() == null;
      if (open && (best == null || lesson.rolls() > best.rolls())) {
        best = lesson;
      }
    }
    return best;
  }

  /** Whether there is a factor to use, other than the one in use. */
  public static boolean isOffered(LearnedView.LessonView lesson) {
    LearnedView.InUseView used = lesson.inUse();
    return lesson.factor() != null
        && (used == null || used.factor() != lesson.factor() || used.rolls() != lesson.rolls());
  }

  /** Whether there is an index to use, other than the one in use. */
  public static boolean isIndexOffered(LearnedView.LessonView lesson) {
    LearnedView.IndexInUseView used = lesson.indexInUse();
    return lesson.ownEi() != null
        && (used == null || used.ei() != lesson.ownEi() || used.rolls() != lesson.indexRolls());
  }

  /** A band of indexes, for example {@code 200 to 400}. */
  public static String indexes(@Nullable List<Double> ends) {
    return ends == null ? "" : Math.round(ends.get(0)) + " to " + Math.round(ends.get(1));
  }

  /** An index as it is set on a camera: whole. */
  public static String index(@Nullable Double ei) {
    return ei == null ? "" : String.valueOf(Math.round(ei));
  }

  /** How many factors are in use. */
  public long inUse() {
    return learned.lessons().stream().filter(lesson -> lesson.inUse() != null).count();
  }

  /** The last roll that raised the flag; null when none did. */
  public LearnedView.@Nullable ChartPointView lastFlag() {
    LearnedView.ChartPointView last = null;
    for (LearnedView.ChartPointView point : learned.chart()) {
      if (!point.drift().isEmpty()) {
        last = point;
      }
    }
    return last;
  }

  /** The rolls of the chart, the last in front. */
  public List<LearnedView.ChartPointView> newestFirst() {
    List<LearnedView.ChartPointView> turned = new java.util.ArrayList<>(learned.chart());
    java.util.Collections.reverse(turned);
    return turned;
  }

  /** A factor as percent, for example {@code +8 %}. */
  public static String percent(double factor) {
    return signed("%+.0f %%", 100 * (factor - 1));
  }

  /** A band of factors as percent, for example {@code +3 to +13 %}. */
  public static String band(@Nullable List<Double> factors) {
    return factors == null
        ? ""
        : signed("%+.0f to ", 100 * (factors.get(0) - 1)) + percent(factors.get(1));
  }

  /** Standard deviations, for example {@code +2.4}. */
  public static String sigmas(double value) {
    return signed("%+.1f", value);
  }

  private static String signed(String format, double value) {
    return String.format(Locale.ROOT, format, value).replace('-', '−');
  }

  /** The day of a moment. */
  public String day(String moment) {
    return days.day(java.time.Instant.parse(moment));
  }
}
