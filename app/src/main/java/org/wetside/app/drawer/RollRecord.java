package org.wetside.app.drawer;

import java.util.List;
import java.util.Optional;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunState;

/**
 * Everything that was done to a roll.
 *
 * @param roll the roll
 * @param sleeve where its negatives are kept, in the owner's words; may be empty
 * @param loads every load it was put into, the last one first
 * @param runs every run it was in, the last one first
 */
public record RollRecord(Roll roll, String sleeve, List<Load> loads, List<Ran> runs) {
  /**
   * One run.
   *
   * @param card its head
   * @param state the fold over everything that happened
   * @param taken for each step what it took from its bottle; empty where no bottle was named
   */
  public record Ran(RunCard card, RunState state, List<Optional<Volume>> taken) {
    public Ran {
      taken = List.copyOf(taken);
    }
  }

  public RollRecord {
    loads = List.copyOf(loads);
    runs = List.copyOf(runs);
  }

  /** The load a run came from. */
  public Optional<Load> loadOf(Ran ran) {
    return loads.stream()
        .filter(load -> ran.card().load().filter(id -> id == load.id()).isPresent())
        .findFirst();
  }
}
