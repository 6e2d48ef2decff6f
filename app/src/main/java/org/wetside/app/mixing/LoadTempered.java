package org.wetside.app.mixing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.WaterAtHand;
import org.wetside.reference.Caution;

/**
 * All baths of a load with how each comes to its temperature.
 *
 * @param load the load
 * @param waters they are tempered from
 * @param room what the bottles and the surroundings are taken to have
 * @param roomSaid whether somebody said it
 * @param timeConstant by which moments are forecast; empty when it was not measured
 * @param baths in the order in which they are begun
 * @param alternative what there is without tempering; empty when that is the temperature wanted
 * @param cautions at the moment of pouring; empty when nothing scalds
 */
public record LoadTempered(
    Load load,
    List<WaterAtHand> waters,
    Temperature room,
    boolean roomSaid,
    Optional<Duration> timeConstant,
    List<BathTempered> baths,
    Optional<Alternative> alternative,
    List<Caution> cautions) {
  public LoadTempered {
    waters = List.copyOf(waters);
    baths = List.copyOf(baths);
    cautions = List.copyOf(cautions);
  }

  /**
   * To work at the temperature there is.
   *
   * @param temperature of the developer as it comes
   * @param time to develop there; empty when there is no honest one
   * @param why why there is none; empty when there is
   */
  public record Alternative(Temperature temperature, Optional<ChosenTime> time, String why) {}
}
