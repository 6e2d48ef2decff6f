package org.wetside.core.bath;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Volume;

/**
 * A working solution made up from concentrate or stock and water.
 *
 * @param dilution parts
 * @param concentrate what is measured out of the bottle
 * @param water what is added
 */
public record WorkingSolution(DilutionRatio dilution, Volume concentrate, Volume water) {
  /**
   * For a total volume, above 0.
   *
   * @throws BadValueException when the total is 0
   */
  public static WorkingSolution of(DilutionRatio dilution, Volume total) {
    if (total.millilitres() <= 0) {
      throw new BadValueException("total to mix", total.toString(), "it must be above 0 mL");
    }
    Volume concentrate = dilution.concentrateIn(total);
    return new WorkingSolution(dilution, concentrate, total.minus(concentrate));
  }

  /**
   * For a dilution however it is written.
   *
   * @throws BadValueException when its parts are not known: a letter alone, or not stated
   */
  public static WorkingSolution of(Dilution dilution, Volume total) {
    return of(
        dilution
            .ratio()
            .orElseThrow(
                () ->
                    new BadValueException(
                        "dilution",
                        dilution.label(),
                        "its parts are not known: write them from the leaflet, for example 1+31")),
        total);
  }

  /** Concentrate and water together. */
  public Volume total() {
    return concentrate.plus(water);
  }
}
