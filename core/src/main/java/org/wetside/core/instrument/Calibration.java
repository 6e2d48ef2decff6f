package org.wetside.core.instrument;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wetside.core.quantity.BadValueException;

/**
 * What one instrument made of one step tablet on one day. It keeps the tablet's densities of that
 * day, so that a tablet that is corrected later changes no earlier calibration.
 *
 * @param on the day
 * @param tablet name of the tablet
 * @param method how values become densities
 * @param steps at least two, in the order of the tablet, all seen in the same channels
 * @param note settings, light, picture; may be empty
 */
public record Calibration(
    LocalDate on, String tablet, Method method, List<SeenStep> steps, String note) {

  /** How values become densities. */
  public enum Method {
    /** P = dark + gain·10^(−exponent·D), fitted. */
    FORMULA("formula"),
    /** A monotone table through the steps themselves. */
    TABLE("table"),
    /** A densitometer: density as it is shown. */
    AS_SHOWN("as shown");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    /** The word shown and stored. */
    public String word() {
      return word;
    }

    /**
     * The method of that word.
     *
     * @throws BadValueException when there is none
     */
    public static Method fromWord(String word) {
      return Arrays.stream(values())
          .filter(one -> one.word.equalsIgnoreCase(word.strip()))
          .findFirst()
          .orElseThrow(
              () -> new BadValueException("method of calibration", word, "formula or table"));
    }
  }

  /** Keeps an unmodifiable copy. */
  public Calibration {
    steps = List.copyOf(steps);
    note = note.strip();
    if (steps.size() < 2) {
      throw new BadValueException("steps seen", steps.size() + "", "at least two of the tablet");
    }
    Set<String> labels = new HashSet<>();
    String first = channelOf(steps.get(0).seen());
    for (SeenStep step : steps) {
      if (!labels.add(step.label())) {
        throw new BadValueException("step seen", step.label(), "each step once");
      }
      if (!channelOf(step.seen()).equals(first)) {
        throw new BadValueException(
            "step " + step.label(),
            "seen in " + channelOf(step.seen()),
            "the first was seen in " + first + "; all steps come from one picture or instrument");
      }
    }
    if ((method == Method.AS_SHOWN) != first.equals("density")) {
      throw new BadValueException(
          "method of calibration",
          method.word(),
          method == Method.AS_SHOWN
              ? "only a densitometer shows densities"
              : "a densitometer shows densities; nothing is fitted");
    }
  }

  /** What was seen: {@code grey}, {@code green} or {@code density}. */
  public String channel() {
    return channelOf(steps.get(0).seen());
  }

  /**
   * How its values become densities.
   *
   * @throws BadValueException when the steps give no such thing, with the reason
   */
  public DensityScale scale() {
    return method == Method.AS_SHOWN ? new ShownScale(steps) : new PixelDensities(this);
  }

  private static String channelOf(Seen seen) {
    return seen instanceof Means means ? means.channel() : "density";
  }
}
