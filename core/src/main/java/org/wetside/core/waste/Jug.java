package org.wetside.core.waste;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A jug for waste.
 *
 * @param name written large on it, 1 to 20 letters, digits, blanks and dashes; no two are alike
 * @param kind what it collects
 * @param holds how much it takes, above 0 and at most 200 L
 */
public record Jug(String name, WasteKind kind, Volume holds) {
  private static final double MOST_ML = 200_000;

  public Jug {
    name = name.strip();
    if (!name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} -]{0,19}") || name.equalsIgnoreCase("new")) {
      throw new BadValueException(
          "name of the jug", name, "1 to 20 letters, digits, blanks or dashes, not \"new\"");
    }
    if (holds.millilitres() <= 0 || holds.millilitres() > MOST_ML) {
      throw new BadValueException(
          "volume of the jug", holds.toString(), "above 0 mL and at most 200 L");
    }
  }

  /** For example {@code jug W1}. */
  public String spoken() {
    return "jug " + name;
  }
}
