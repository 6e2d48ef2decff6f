package org.wetside.web.formula;

import org.jspecify.annotations.Nullable;

/**
 * A batch to begin: a formula and what is asked of it, as it would be typed.
 *
 * @param formula its name
 * @param make volume wanted, for example {@code 700mL}
 * @param have what is in the cupboard in place of an ingredient, several parted by {@code ;}
 * @param balance the smallest step the balance shows, for example {@code 0.1g}
 * @param measures syringes and graduates at hand, for example {@code 100mL/1mL}, parted by {@code
 *     ;}
 */
public record BatchBody(
    String formula,
    @Nullable String make,
    @Nullable String have,
    @Nullable String balance,
    @Nullable String measures) {
  /** The same as a query. */
  public FormulaQuery query() {
    return new FormulaQuery(make, have, balance, measures);
  }
}
