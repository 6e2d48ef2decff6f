package org.wetside.core.chemistry;

import java.util.Map;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Citation;

/**
 * Standard atomic weights.
 *
 * @param gramsPerMole by symbol, g/mol
 * @param citation where they are published
 */
public record AtomicWeights(Map<String, Double> gramsPerMole, Citation citation) {
  /** Keeps an unmodifiable copy. */
  public AtomicWeights {
    gramsPerMole = Map.copyOf(gramsPerMole);
  }

  /**
   * The mass of one mole.
   *
   * @throws BadValueException naming an element that has no weight here
   */
  public MolarMass of(Composition composition) {
    double sum = 0;
    for (Map.Entry<String, Integer> one : composition.atoms().entrySet()) {
      Double weight = gramsPerMole.get(one.getKey());
      if (weight == null) {
        throw new BadValueException(
            "element", one.getKey(), "no atomic weight of that symbol is on file");
      }
      sum += weight * one.getValue();
    }
    return new MolarMass(sum);
  }
}
