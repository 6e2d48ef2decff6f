package org.wetside.web.strip;

import java.util.Locale;
import java.util.Optional;
import org.wetside.core.sensitometry.Interval;

/** Numbers as the pages about curves write them. */
final class Digits {
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double WHOLE_FROM = 9.95;

  private Digits() {}

  /** Two decimals, a real minus. */
  static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value == 0 ? 0.0 : value)
        .replace("-0.00", "0.00")
        .replace('-', '−');
  }

  /** Three decimals: where two would round across a limit. */
  static String three(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replace('-', '−');
  }

  /** A speed: whole from 10 on. */
  static String speed(double value) {
    return value >= WHOLE_FROM
        ? String.valueOf(Math.round(value))
        : String.format(Locale.ROOT, "%.1f", value);
  }

  /** Seconds as {@code 9:40}. */
  static String clock(double seconds) {
    return clock(Math.round(seconds));
  }

  /** Whole seconds as {@code 9:40}. */
  static String clock(long whole) {
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  /** Minutes of seconds. */
  static double minutes(double seconds) {
    return seconds / SECONDS_PER_MINUTE;
  }

  /** {@code 0.57 to 0.60}; empty without a band. */
  static String twoBand(Optional<Interval> band) {
    return band.map(ends -> two(ends.low()) + " to " + two(ends.high())).orElse("");
  }

  /** {@code 88 to 97}; empty without a band. */
  static String speedBand(Optional<Interval> band) {
    return band.map(ends -> speed(Math.max(0, ends.low())) + " to " + speed(ends.high()))
        .orElse("");
  }
}
