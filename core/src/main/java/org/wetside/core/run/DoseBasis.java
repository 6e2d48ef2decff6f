package org.wetside.core.run;

import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.thermal.DevelopmentRate;

/**
 * What the development dose of a run is reckoned from; copied when the run is opened.
 *
 * @param rate how fast the developer works at other temperatures
 * @param room temperature of the tank and the film before the first pour; empty when nobody said
 * @param tankJoulesPerKelvin heat that film, reels and tank take up, at least 0 J/K
 * @param fill liquid in the tank; empty when not known
 */
public record DoseBasis(
    DevelopmentRate rate,
    Optional<Temperature> room,
    double tankJoulesPerKelvin,
    Optional<Volume> fill) {
  /** Film, reels and tank of a small tank, unless somebody measured it (common practice). */
  public static final double USUAL_TANK_J_PER_K = 150;

  private static final double WATER_J_PER_ML_K = 4.18;

  /** The developer as it is poured, once film, reels and tank have taken their share. */
  Temperature inTank(Temperature poured, Optional<Temperature> tank) {
    if (tank.isEmpty() || fill.isEmpty()) {
      return poured;
    }
    double liquid = fill.get().millilitres() * WATER_J_PER_ML_K;
    double heat = liquid * poured.celsius() + tankJoulesPerKelvin * tank.get().celsius();
    return Temperature.ofCelsius(heat / (liquid + tankJoulesPerKelvin));
  }
}
