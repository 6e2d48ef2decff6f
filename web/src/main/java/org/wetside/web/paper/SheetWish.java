package org.wetside.web.paper;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/**
 * What is typed about a run sheet.
 *
 * @param start when the first pour will be, such as {@code 20:05}; the next whole five minutes that
 *     leave ten to get ready when nothing is said. Asked only before the first pour
 * @param paper {@code a4} or {@code letter}
 */
public record SheetWish(@Nullable String start, @Nullable String paper) {
  private static final Duration READY = Duration.ofMinutes(10);
  private static final int STEP_MINUTES = 5;

  /** The paper it is printed on. */
  public enum Paper {
    /** 210 by 297 mm. */
    A4,
    /** 8.5 by 11 inches. */
    LETTER;

    /** As it is typed. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The first pour to assume: typed, or as the load says, or soon. */
  Instant start(Optional<Instant> planned, Clock clock) {
    ZonedDateTime now = ZonedDateTime.ofInstant(clock.instant(), clock.getZone());
    if (start != null && !start.isBlank()) {
      ZonedDateTime today = now.with(time(start.strip()));
      boolean longAgo = today.isBefore(now.minusHours(12));
      return (longAgo ? today.plusDays(1) : today).toInstant();
    }
    ZonedDateTime soon = now.plus(READY).truncatedTo(ChronoUnit.MINUTES);
    int over = soon.getMinute() % STEP_MINUTES;
    return planned
        .filter(at -> at.isAfter(now.toInstant()))
        .orElse(soon.plusMinutes(over == 0 ? 0 : STEP_MINUTES - over).toInstant());
  }

  /**
   * The paper.
   *
   * @throws BadValueException when there is no such paper here
   */
  public Paper format() {
    if (paper == null || paper.isBlank()) {
      return Paper.A4;
    }
    for (Paper one : Paper.values()) {
      if (one.word().equalsIgnoreCase(paper.strip())) {
        return one;
      }
    }
    throw new BadValueException("paper", paper, "a4 or letter");
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text.length() == 4 ? "0" + text : text);
    } catch (DateTimeException unreadable) {
      throw new BadValueException("start", text, "a time of the day such as 20:05 or 20:05:30");
    }
  }
}
