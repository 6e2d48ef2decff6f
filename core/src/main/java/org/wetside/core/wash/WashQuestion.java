package org.wetside.core.wash;

import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Temperature;

/**
 * A wash to be foreseen.
 *
 * @param carried the film and what it brings along
 * @param start strength of thiosulfate in the fixer, above 0 to 1000 g/L
 * @param water temperature of the wash water
 * @param changes what is done, in order; 1 to 200
 */
public record WashQuestion(
    CarriedLiquid carried, Concentration start, Temperature water, List<WaterChange> changes) {
  private static final Concentration STRONGEST = Concentration.ofGramsPerLitre(1000);
  private static final int MOST_CHANGES = 200;

  public WashQuestion {
    changes = List.copyOf(changes);
    if (start.gramsPerLitre() <= 0 || start.compareTo(STRONGEST) > 0) {
      throw new BadValueException(
          "strength of the fixer", start.toString(), "above 0, to 1000 g/L");
    }
    if (changes.isEmpty() || changes.size() > MOST_CHANGES) {
      throw new BadValueException(
          "fills", changes.size() + "", "between 1 and " + MOST_CHANGES + " fills");
    }
  }
}
