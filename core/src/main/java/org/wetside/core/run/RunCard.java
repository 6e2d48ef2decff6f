package org.wetside.core.run;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * What stands at the head of a run's record. Copied from the load when the run was opened, so that
 * the record can be read without anything else.
 *
 * @param id identity; 0 before it is stored
 * @param load the load it came from
 * @param name what the run is called
 * @param tank name of the tank
 * @param rolls in their order in the tank, from the bottom
 * @param process short name of the process
 * @param processName as people call it
 * @param developer name of the developer
 * @param dilution how it was made
 * @param temperature the bath's planned temperature
 * @param timeStanding how the development time was known
 * @param timeSource where it stands
 * @param volume liquid in the tank
 * @param openedAt when the run was opened
 */
public record RunCard(
    long id,
    Optional<Long> load,
    String name,
    String tank,
    List<RollInTank> rolls,
    String process,
    String processName,
    String developer,
    Dilution dilution,
    Optional<Temperature> temperature,
    Standing timeStanding,
    String timeSource,
    Optional<Volume> volume,
    Instant openedAt) {
  public RunCard {
    rolls = List.copyOf(rolls);
  }

  /** The same under the identity the store gave it. */
  public RunCard withId(long given) {
    return new RunCard(
        given,
        load,
        name,
        tank,
        rolls,
        process,
        processName,
        developer,
        dilution,
        temperature,
        timeStanding,
        timeSource,
        volume,
        openedAt);
  }
}
