package org.wetside.core.chemistry;

import java.util.Map;
import org.wetside.core.quantity.BadValueException;

/**
 * How many atoms of each element one unit of a substance has.
 *
 * @param atoms counts by symbol, each above 0
 */
public record Composition(Map<String, Integer> atoms) {
  /** Keeps an unmodifiable copy. */
  public Composition {
    atoms = Map.copyOf(atoms);
  }

  /**
   * Reads a chemical formula such as {@code Na2SO3.7H2O} or {@code KAl(SO4)2.12H2O}; the dot may
   * also be {@code ·}.
   *
   * @throws BadValueException when it is none
   */
  public static Composition parse(String formula) {
    return new Composition(new FormulaReader(formula).read());
  }

  /** How many atoms of that element; 0 when there is none. */
  public int count(String element) {
    return atoms.getOrDefault(element, 0);
  }
}
