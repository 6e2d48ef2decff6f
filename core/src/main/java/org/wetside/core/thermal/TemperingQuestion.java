package org.wetside.core.thermal;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * A volume wanted at a temperature, and what there is to make it from.
 *
 * @param target temperature wanted, 0 to 100 °C
 * @param total volume wanted, at the target; above 0
 * @param countedIn concentrate or stock that is part of the total, less than the total together
 * @param waters waters at hand in the order in which they are preferred; the first two that reach
 *     the target are used, so an ice-box stands last
 * @param vessel the vessel, when its heat is to be counted
 */
public record TemperingQuestion(
    Temperature target,
    Volume total,
    List<Liquid> countedIn,
    List<WaterAtHand> waters,
    Optional<Vessel> vessel) {

  public TemperingQuestion {
    countedIn = List.copyOf(countedIn);
    waters = List.copyOf(waters);
    if (total.millilitres() <= 0) {
      throw new BadValueException("volume to temper", total.toString(), "it must be above 0 mL");
    }
    if (waters.isEmpty()) {
      throw new BadValueException(
          "waters at hand", "none", "say at least one, for example cold 15 °C");
    }
    Volume counted = countedIn.stream().map(Liquid::volume).reduce(Volume.ZERO, Volume::plus);
    if (counted.compareTo(total) >= 0) {
      throw new BadValueException(
          "stock or concentrate counted in",
          counted.toString(),
          "it must leave room for water in the total of " + total);
    }
  }

  /** Plain water, nothing counted in. */
  public static TemperingQuestion ofWater(
      Temperature target, Volume total, List<WaterAtHand> waters) {
    return new TemperingQuestion(target, total, List.of(), waters, Optional.empty());
  }

  /** The answer, by balance of mass and of heat. */
  public Tempering answer() {
    return new HeatBalance(this).solve();
  }

  /** The temperature of the whole when only the first water is taken: no tempering at all. */
  public Temperature asItComes() {
    return new HeatBalance(this).withOnly(waters.get(0));
  }
}
