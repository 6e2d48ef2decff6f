package org.wetside.web.strip;

import java.util.OptionalDouble;
import org.wetside.app.curves.KeepMeasuredTime;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastTime;
import org.wetside.core.sensitometry.Measure;

/** Words about a family of strips. */
final class FamilyText {
  private static final String INDEX = "contrast-index";
  private static final String AVERAGE = "average-gradient";

  private FamilyText() {}

  /** {@code N}, {@code N+1}. */
  static String n(int n) {
    return KeepMeasuredTime.words(n);
  }

  /** {@code 9:10 to 10:05}; an open end says so. */
  static String band(ContrastTime time) {
    return end(time.lowSeconds(), "below the shortest")
        + " to "
        + end(time.highSeconds(), "beyond the longest");
  }

  private static String end(OptionalDouble seconds, String open) {
    return seconds.isPresent() ? Digits.clock(seconds.getAsDouble()) : open;
  }

  /** Whether an exponential goes through the points, in a sentence. */
  static String description(ContrastDescription description) {
    if (description instanceof ContrastDescription.Described fit) {
      return "An exponential describes the points: it tends to "
          + Digits.two(fit.saturation().limit())
          + " at a rate of "
          + Digits.two(fit.saturation().ratePerMinute())
          + " a minute, "
          + Digits.two(fit.residual())
          + " of contrast is left over. Times are read from the points, not from it."
          + (fit.warnings().isEmpty() ? "" : " " + String.join("; ", fit.warnings()) + ".");
    }
    return "No exponential is drawn: "
        + ((ContrastDescription.Refused) description).reason()
        + ". Times are read from the points.";
  }

  /** A measure as it stands in an address. */
  static String word(Measure measure) {
    return measure == Measure.AVERAGE_GRADIENT ? AVERAGE : INDEX;
  }

  /**
   * Reads {@link #word} back; blank is the contrast index.
   *
   * @throws BadValueException for any other word
   */
  static Measure measure(String word) {
    return switch (word.strip()) {
      case "", INDEX -> Measure.CONTRAST_INDEX;
      case AVERAGE -> Measure.AVERAGE_GRADIENT;
      default -> throw new BadValueException("measure of the aim", word, INDEX + " or " + AVERAGE);
    };
  }
}
