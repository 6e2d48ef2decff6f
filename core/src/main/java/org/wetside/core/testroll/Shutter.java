package org.wetside.core.testroll;

import java.util.Locale;
import java.util.OptionalInt;
import org.wetside.core.quantity.BadValueException;

/**
 * A shutter speed of the trade's scale of whole and third stops, 1 s to 1/8000. It is named by its
 * nominal mark and reckoned by its exact place: 1/1000 is ten stops from 1 s, 1/1024 s.
 *
 * @param thirds thirds of a stop faster than 1 s, 0 to 39
 */
public record Shutter(int thirds) implements Comparable<Shutter> {
  private static final String THING = "shutter speed";
  private static final String LIMIT =
      "a mark of the scale of whole or third stops from 1 to 1/8000, for example 1/60";

  private static final StopScale MARKS =
      new StopScale(
          "1", "1/1.3", "1/1.6", "1/2", "1/2.5", "1/3", "1/4", "1/5", "1/6", "1/8", "1/10", "1/13",
          "1/15", "1/20", "1/25", "1/30", "1/40", "1/50", "1/60", "1/80", "1/100", "1/125", "1/160",
          "1/200", "1/250", "1/320", "1/400", "1/500", "1/640", "1/800", "1/1000", "1/1250",
          "1/1600", "1/2000", "1/2500", "1/3200", "1/4000", "1/5000", "1/6400", "1/8000");

  /**
   * Checks that it is on the scale.
   *
   * @throws BadValueException when it is beyond either end
   */
  public Shutter {
    if (!MARKS.holds(thirds)) {
      throw new BadValueException(THING, thirds + " thirds of a stop from 1 s", LIMIT);
    }
  }

  /**
   * Reads {@code 1/60}, {@code 1/60 s} or {@code 1}.
   *
   * @throws BadValueException for what is on no dial
   */
  public static Shutter parse(String text) {
    String mark = text.toLowerCase(Locale.ROOT).replaceFirst("s\\s*$", "").replace(" ", "");
    OptionalInt place = MARKS.thirds(mark);
    if (place.isEmpty()) {
      throw new BadValueException(THING, text.strip(), LIMIT);
    }
    return new Shutter(place.getAsInt());
  }

  /** How long it is open in truth, in seconds: a power of two. */
  public double exactSeconds() {
    return Math.pow(2, -thirds / 3.0);
  }

  /** Faster speeds come later. */
  @Override
  public int compareTo(Shutter other) {
    return Integer.compare(thirds, other.thirds);
  }

  /** The mark, for example {@code 1/60}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return MARKS.mark(thirds);
  }
}
