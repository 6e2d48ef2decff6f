package org.wetside.core.testroll;

import java.util.Locale;
import java.util.OptionalInt;
import org.wetside.core.quantity.BadValueException;

/**
 * A relative aperture of the trade's scale of whole and third stops, f/1 to f/64. It is named by
 * its nominal mark and reckoned by its exact place: f/11 is seven stops from f/1, f/11.31.
 *
 * @param thirds thirds of a stop smaller than f/1, 0 to 36
 */
public record Aperture(int thirds) implements Comparable<Aperture> {
  private static final String THING = "aperture";
  private static final String LIMIT =
      "a mark of the scale of whole or third stops from f/1 to f/64, for example f/8";

  private static final StopScale MARKS =
      new StopScale(
          "1", "1.1", "1.2", "1.4", "1.6", "1.8", "2", "2.2", "2.5", "2.8", "3.2", "3.5", "4",
          "4.5", "5", "5.6", "6.3", "7.1", "8", "9", "10", "11", "13", "14", "16", "18", "20", "22",
          "25", "29", "32", "36", "40", "45", "51", "57", "64");

  /**
   * Checks that it is on the scale.
   *
   * @throws BadValueException when it is beyond either end
   */
  public Aperture {
    if (!MARKS.holds(thirds)) {
      throw new BadValueException(THING, thirds + " thirds of a stop from f/1", LIMIT);
    }
  }

  /**
   * Reads {@code f/8}, {@code f8} or {@code 8}.
   *
   * @throws BadValueException for what is on no lens
   */
  public static Aperture parse(String text) {
    String mark = text.toLowerCase(Locale.ROOT).replace(" ", "").replaceFirst("^f/?", "");
    OptionalInt place = MARKS.thirds(mark);
    if (place.isEmpty()) {
      throw new BadValueException(THING, text.strip(), LIMIT);
    }
    return new Aperture(place.getAsInt());
  }

  /** The f-number in truth: a power of the square root of two. */
  public double exactNumber() {
    return Math.pow(2, thirds / 6.0);
  }

  /** Smaller apertures come later. */
  @Override
  public int compareTo(Aperture other) {
    return Integer.compare(thirds, other.thirds);
  }

  /** The mark, for example {@code f/8}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return "f/" + MARKS.mark(thirds);
  }
}
