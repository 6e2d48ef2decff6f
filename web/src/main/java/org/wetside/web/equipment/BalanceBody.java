package org.wetside.web.equipment;

import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;

/**
 * The balance of the house.
 *
 * @param stepGrams the smallest step it shows, above 0
 */
public record BalanceBody(@Nullable Double stepGrams) {
  /**
   * The balance that was said.
   *
   * @throws BadValueException when the step is missing or one that no balance has
   */
  public Balance balance() {
    if (stepGrams == null) {
      throw new BadValueException("balance step", "nothing", "say the smallest step it shows in g");
    }
    return new Balance(Mass.ofGrams(stepGrams));
  }
}
