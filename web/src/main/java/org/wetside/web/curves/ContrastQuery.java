package org.wetside.web.curves;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Gradient;

/**
 * What is asked of contrast against time, as it was typed.
 *
 * @param aim contrast wanted, for example {@code 0.58}, in the measure of the series
 */
public record ContrastQuery(@Nullable String aim) {
  /**
   * The contrast wanted.
   *
   * @throws BadValueException when it is missing or no number
   */
  public Gradient gradient() {
    if (aim == null || aim.isBlank()) {
      throw new BadValueException("contrast wanted", "nothing", "give it, for example 0.58");
    }
    String typed = aim.strip();
    if (typed.matches("\\d*,\\d+")) {
      throw new BadValueException(
          "contrast wanted", typed, "its decimal mark is a comma: write a point, as in 0.58");
    }
    if (!typed.matches("\\d+\\.?\\d*|\\.\\d+")) {
      throw new BadValueException("contrast wanted", typed, "it must be a number, as in 0.58");
    }
    return Gradient.of(Double.parseDouble(typed));
  }
}
