package org.wetside.web.learning;

import org.wetside.core.quantity.BadValueException;

/** A density as it is typed. */
public final class DensityText {
  private DensityText() {}

  /**
   * Reads {@code 0.32}.
   *
   * @param thing what it is the density of, for the message
   * @throws BadValueException when it is no number; a comma is named
   */
  public static double parse(String thing, String text) {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException(
          thing,
          text.strip(),
          text.contains(",")
              ? "write it with a point, for example " + text.strip().replace(',', '.')
              : "write a density, for example 0.32");
    }
  }
}
