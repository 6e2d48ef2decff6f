package org.wetside.app.wash;

import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * What every wash needs to be said.
 *
 * @param fill water that fills the tank once
 * @param film how much film is in it, above 0
 * @param start strength of the fixer; empty takes the worked example on file
 * @param carryOver all that comes along with the film; empty takes the usual for so much film
 * @param water temperature of the wash water
 */
public record WashWish(
    Volume fill,
    UnitOfUse film,
    Optional<Concentration> start,
    Optional<Volume> carryOver,
    Temperature water) {
  /** Water of ordinary temperature, in which the half-times on file hold. */
  public static final Temperature ORDINARY = Temperature.ofCelsius(20);
}
