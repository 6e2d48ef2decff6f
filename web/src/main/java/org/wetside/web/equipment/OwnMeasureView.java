package org.wetside.web.equipment;

import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * A syringe or graduate of the house.
 *
 * @param name as it is called at the sink; one is made of what it holds when nothing is said
 * @param holdsMl up to its last mark
 * @param divisionMl between two marks
 */
public record OwnMeasureView(
    @Nullable String name, @Nullable Double holdsMl, @Nullable Double divisionMl) {
  /** The view of a measure. */
  static OwnMeasureView of(Measure measure) {
    return new OwnMeasureView(
        measure.name(), measure.capacity().millilitres(), measure.division().millilitres());
  }

  /**
   * The measure that was said.
   *
   * @throws BadValueException when half of it is missing, or it cannot be read
   */
  public Measure measure() {
    Volume holds = said("volume of the measure", holdsMl);
    Volume division = said("division of the measure", divisionMl);
    return of(name == null ? "" : name, holds, division);
  }

  /** A measure of the user's; without a name it is called by what it holds. */
  static Measure of(String name, Volume holds, Volume division) {
    return new Measure(
        name.isBlank() ? "measure of " + holds : name.strip(), holds, division, Standing.MEASURED);
  }

  private static Volume said(String thing, @Nullable Double millilitres) {
    if (millilitres == null) {
      throw new BadValueException(thing, "nothing", "say it in mL");
    }
    return Volume.ofMillilitres(millilitres);
  }
}
