package org.wetside.web.page;

import org.wetside.core.chemistry.Balance;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;

/** Reads the smallest step that a balance shows, as people type it. */
public final class BalanceText {
  private BalanceText() {}

  /**
   * A step in a form: a bare number is grams, which stand in the label.
   *
   * @throws BadValueException when it is no mass, or a step that no balance has, such as zero
   */
  public static Balance parse(String text) {
    String typed = text.strip();
    boolean bare = !typed.isEmpty() && ".0123456789".indexOf(typed.charAt(typed.length() - 1)) >= 0;
    return parseWithUnit(bare ? typed + "g" : typed);
  }

  /**
   * A step with its unit; one below zero is a step that no balance has either.
   *
   * @throws BadValueException likewise
   */
  public static Balance parseWithUnit(String text) {
    try {
      return new Balance(Mass.parse(text));
    } catch (BadValueException refused) {
      if (refused.thing().equals("balance step")) {
        throw refused;
      }
      throw new BadValueException(
          "balance step", text.strip(), "write the smallest step with its unit, for example 0.1g");
    }
  }
}
