package org.wetside.core.quantity;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Durations as darkroom people write them; the value itself is {@link Duration}. */
public final class TimeSpan {
  private static final Pattern CLOCK =
      Pattern.compile("\\s*(?:(\\d{1,3}):)?(\\d{1,3}):(\\d{2}(?:\\.\\d+)?)\\s*");

  private TimeSpan() {}

  /**
   * Reads {@code 9:45} (minutes and seconds), {@code 1:02:30}, {@code 90s}, {@code 2min}, {@code
   * 1.5min}, {@code 1h}.
   *
   * @param thing what is being given, for the message
   * @throws BadValueException when it is none of these, when seconds exceed 59, or without a unit
   */
  public static Duration parse(String thing, String text) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      double hours = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      double minutes = Double.parseDouble(clock.group(2));
      double seconds = Double.parseDouble(clock.group(3));
      if (seconds >= 60 || (clock.group(1) != null && minutes >= 60)) {
        throw new BadValueException(thing, text, "seconds (and minutes after hours) go to 59");
      }
      return ofSeconds(hours * 3600 + minutes * 60 + seconds);
    }
    Written written = Written.parse(thing, text, "9:45, 90s or 2min");
    if (written.number() < 0) {
      throw new BadValueException(thing, text, "a time cannot be negative");
    }
    switch (written.unit()) {
      case "s", "sec" -> {
        return ofSeconds(written.number());
      }
      case "min", "m" -> {
        return ofSeconds(written.number() * 60);
      }
      case "h" -> {
        return ofSeconds(written.number() * 3600);
      }
      case "" ->
          throw new BadValueException(
              thing, text, "say minutes and seconds (9:45) or the unit (90s, 2min)");
      default -> throw new BadValueException(thing, text, "write 9:45, 90s, 2min or 1h");
    }
  }

  /** From seconds, rounded to the nearest nanosecond. */
  public static Duration ofSeconds(double seconds) {
    return Duration.ofNanos(Math.round(Finite.require(seconds, "time", "s") * 1e9));
  }

  /** As seconds, for the inside of a computation. */
  public static double toSeconds(Duration duration) {
    return duration.getSeconds() + duration.getNano() / 1e9;
  }
}
