package org.wetside.app.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.app.process.OrderWarning;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.Sharing;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.Volume;

/**
 * A wish thought through: what it comes to, and what stands in its way.
 *
 * @param wish what was wanted
 * @param tank the tank
 * @param process the process, its developer not yet timed
 * @param rolls each roll with the time found for it alone
 * @param sharing whether they may share the tank
 * @param time the time to run at; empty when none was found and none given
 * @param fill liquid in the tank
 * @param covers the liquid that covers the film
 * @param film how much film it is
 * @param mix concentrate and water; empty when the parts of the dilution are not known
 * @param stock whether there is enough of the developer for so much film
 * @param length from the first pour to hanging; empty without a time
 * @param inTheWay what has to be settled before it can be kept, in sentences
 * @param warnings what speaks against the order of its baths; it can be kept all the same
 */
public record PreparedLoad(
    LoadWish wish,
    Tank tank,
    FilmProcess process,
    List<TimedRoll> rolls,
    Sharing sharing,
    Optional<ChosenTime> time,
    Volume fill,
    Volume covers,
    UnitOfUse film,
    Optional<WorkingSolution> mix,
    Optional<StockRequirement> stock,
    Optional<Duration> length,
    List<String> inTheWay,
    List<OrderWarning> warnings) {
  public PreparedLoad {
    rolls = List.copyOf(rolls);
    inTheWay = List.copyOf(inTheWay);
    warnings = List.copyOf(warnings);
  }

  /**
   * A roll and the time found for it alone.
   *
   * @param roll the roll
   * @param time its own time; empty when there is no honest one
   * @param why why there is none; empty when there is
   * @param aboutIndex what an own index in use means for it; empty when nothing
   */
  public record TimedRoll(Roll roll, Optional<ChosenTime> time, String why, String aboutIndex) {}

  /** Whether it can be kept as it is. */
  public boolean canBeKept() {
    return inTheWay.isEmpty();
  }
}
