package org.wetside.web.strip;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.PrintAim;

/**
 * Which curves are read together and for what, as typed; null or blank is not said.
 *
 * @param curves their numbers, parted by commas
 * @param range log exposure range that the paper or scan takes, log10; 1.05 when not said (SE-S42)
 * @param flare of camera and lens, log10; 0.40 when not said (SE-S55)
 * @param measure {@code contrast-index}, or {@code average-gradient}
 */
public record FamilyQuery(
    @Nullable String curves,
    @Nullable String range,
    @Nullable String flare,
    @Nullable String measure) {
  /** Of SE-S42. */
  static final String USUAL_RANGE = "1.05";

  /** Of SE-S55. */
  static final String USUAL_FLARE = "0.40";

  /**
   * The numbers of the curves.
   *
   * @throws BadValueException when one is no number
   */
  List<Long> numbers() {
    List<Long> numbers = new ArrayList<>();
    for (String one : text(curves, "").split(",", -1)) {
      String bare = one.strip();
      if (bare.isEmpty()) {
        continue;
      }
      if (!bare.matches("\\d{1,15}")) {
        throw new BadValueException("curve", bare, "its number, for example 3");
      }
      Long number = Long.valueOf(bare);
      if (!numbers.contains(number)) {
        numbers.add(number);
      }
    }
    return numbers;
  }

  /**
   * What negatives are made for.
   *
   * @throws BadValueException when a number is not understood or beyond its limits
   */
  PrintAim aim() {
    return new PrintAim(
        number("log exposure range", text(range, USUAL_RANGE)),
        number("flare", text(flare, USUAL_FLARE)),
        FamilyText.measure(text(measure, "")));
  }

  private static String text(@Nullable String typed, String otherwise) {
    return typed == null || typed.isBlank() ? otherwise : typed.strip();
  }

  private static double number(String thing, String typed) {
    if (typed.matches("\\d*,\\d+")) {
      throw new BadValueException(
          thing, typed, "its decimal mark is a comma: write a point, as in 1.05");
    }
    if (!typed.matches("\\d+\\.?\\d*|\\.\\d+")) {
      throw new BadValueException(thing, typed, "it must be a number, as in 1.05");
    }
    return Double.parseDouble(typed);
  }
}
