package org.wetside.web.testroll;

import org.jspecify.annotations.Nullable;
import org.wetside.app.testroll.DevelopedDraft;

/**
 * How a piece was really developed; null is not said.
 *
 * @param time for example {@code 8:10}; as planned when not said
 * @param temp temperature of the developer with its unit
 * @param day year-month-day; today when not said
 * @param note in any words
 */
public record DevelopedBody(
    @Nullable String time, @Nullable String temp, @Nullable String day, @Nullable String note) {
  DevelopedDraft draft() {
    return new DevelopedDraft(text(time), text(temp), text(day));
  }

  /** What was said with it. */
  String words() {
    return text(note);
  }

  private static String text(@Nullable String said) {
    return said == null ? "" : said;
  }
}
