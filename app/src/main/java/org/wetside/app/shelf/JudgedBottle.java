package org.wetside.app.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.shelf.ClearingComparison;
import org.wetside.core.shelf.FixingTime;
import org.wetside.core.shelf.Verdict;

/**
 * A bottle and what follows from what is known of it.
 *
 * @param bottle the bottle
 * @param verdict whether to use it, and why
 * @param capacity what such a bath does; empty when nothing is on file, or nothing goes back into
 *     it
 * @param left what it can still do, of ordinary film; empty with the capacity
 * @param rolls the same in rolls of each film at hand
 * @param fixing how long to fix next, at 20 °C when nothing else was asked; empty without a
 *     clearing time
 * @param clearing its last clearing time beside that of the fresh solution
 */
public record JudgedBottle(
    Bottle bottle,
    Verdict verdict,
    Optional<Capacity> capacity,
    Optional<UnitOfUse> left,
    List<FilmLeft> rolls,
    Optional<FixingTime> fixing,
    ClearingComparison clearing) {
  /**
   * What a bottle can still do of one film.
   *
   * @param film the film and its size, as in the drawer
   * @param rolls how many whole rolls
   * @param waiting how many of it wait in the drawer
   */
  public record FilmLeft(String film, int rolls, int waiting) {}

  public JudgedBottle {
    rolls = List.copyOf(rolls);
  }
}
