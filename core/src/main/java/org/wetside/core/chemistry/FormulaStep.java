package org.wetside.core.chemistry;

import java.util.Optional;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One step of a formula, in order of dissolving.
 *
 * @param order from 1
 * @param ingredient as it is written
 * @param kind water to begin with, something dissolved, water to make up the volume
 * @param mass what is weighed; empty for liquids, or when the amount is missing
 * @param volume what is measured; empty for solids, or when the amount is missing
 * @param water how warm the water is, as written; empty when nothing is said
 * @param substance which substance is meant; empty when none on file
 * @param note limits of the reading; may be empty
 * @param citation where it is printed
 * @param standing how it is known
 */
public record FormulaStep(
    int order,
    String ingredient,
    Kind kind,
    Optional<Mass> mass,
    Optional<Volume> volume,
    Optional<TemperatureRange> water,
    Optional<Substance> substance,
    String note,
    Citation citation,
    Standing standing) {

  /** What a step does. */
  public enum Kind {
    /** The water that things are dissolved in. */
    WATER,
    /** Something that is dissolved or poured in. */
    INGREDIENT,
    /** Water up to the whole volume. */
    WATER_TO_MAKE
  }

  /** Whether its amount is known. */
  public boolean hasAmount() {
    return mass.isPresent() || volume.isPresent();
  }
}
