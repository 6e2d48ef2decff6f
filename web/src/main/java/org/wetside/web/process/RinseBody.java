package org.wetside.web.process;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/**
 * Where a rinse is wanted.
 *
 * @param before number of the step it comes before, 2 or more
 */
public record RinseBody(@Nullable Integer before) {
  /**
   * The number.
   *
   * @throws BadValueException when none was given
   */
  public int step() {
    if (before == null) {
      throw new BadValueException("step for the rinse", "", "say before which step, from 2");
    }
    return before;
  }

  /**
   * As it is typed.
   *
   * @throws BadValueException when it is no whole number
   */
  public static RinseBody parse(String text) {
    try {
      return new RinseBody(Integer.valueOf(text.strip()));
    } catch (NumberFormatException notOne) {
      throw new BadValueException("step for the rinse", text, "a whole number from 2");
    }
  }
}
