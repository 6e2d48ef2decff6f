package org.wetside.web.rolls;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Days and ages in words, in the time zone of this machine.
 *
 * @param today the day it is
 */
public record Days(LocalDate today) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.UK);
  private static final DateTimeFormatter DAY_OF_YEAR =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
  private static final int WEEKS_FROM = 21;
  private static final int MONTHS_FROM = 91;
  private static final int YEARS_FROM = 730;

  /** As of now. */
  public static Days of(Clock clock) {
    return new Days(LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()));
  }

  /** For example {@code 3 October}; with the year when it is not this year. */
  public String day(LocalDate day) {
    return (day.getYear() == today.getYear() ? DAY : DAY_OF_YEAR).format(day);
  }

  /** The day of a moment. */
  public String day(Instant moment) {
    return day(dayOf(moment));
  }

  /** The day a moment falls on. */
  public static LocalDate dayOf(Instant moment) {
    return LocalDate.ofInstant(moment, ZoneId.systemDefault());
  }

  /** Hours, minutes and seconds of a moment. */
  public static String clock(Instant moment) {
    return CLOCK.format(moment.atZone(ZoneId.systemDefault()));
  }

  /** How long ago a day is: today, days, weeks, months, years. */
  public String age(LocalDate day) {
    long days = ChronoUnit.DAYS.between(day, today);
    if (days < 1) {
      return "today";
    }
    if (days < WEEKS_FROM) {
      return count(days, "day");
    }
    if (days < MONTHS_FROM) {
      return count(days / 7, "week");
    }
    return days < YEARS_FROM
        ? count(ChronoUnit.MONTHS.between(day, today), "month")
        : count(ChronoUnit.YEARS.between(day, today), "year");
  }

  /** For example {@code 1 roll}, {@code 4 rolls}. */
  public static String count(long count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
