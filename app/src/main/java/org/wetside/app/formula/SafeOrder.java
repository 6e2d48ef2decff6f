package org.wetside.app.formula;

import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.safety.Objection;
import org.wetside.reference.CombinationRules;
import org.wetside.reference.Materials;

/** Refuses to put things into one vessel in an order in which they must not meet. */
final class SafeOrder {
  private SafeOrder() {}

  /**
   * Lets pass what may be mixed so.
   *
   * @param names what goes in, the first first
   * @throws BadValueException naming both things, the reason and the source
   */
  static void require(List<String> names) {
    Materials materials = Materials.open();
    Objection.requireNoneRefused(
        CombinationRules.open().inOrder(names.stream().map(materials::ofIngredient).toList()));
  }
}
