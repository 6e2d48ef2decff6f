package org.wetside.core.chemistry;

import org.wetside.core.quantity.BadValueException;

/**
 * The mass of one mole of a substance.
 *
 * @param gramsPerMole g/mol, above 0
 */
public record MolarMass(double gramsPerMole) {
  /** Refuses what no substance has. */
  public MolarMass {
    if (!(gramsPerMole > 0) || Double.isInfinite(gramsPerMole)) {
      throw new BadValueException(
          "molar mass", gramsPerMole + " g/mol", "it must be a number above 0 g/mol");
    }
  }
}
