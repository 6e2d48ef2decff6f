package org.wetside.core.bath;

import java.time.Instant;
import java.util.List;
import org.wetside.core.quantity.Volume;

/**
 * A bottle as its book tells it.
 *
 * @param label what stands on it
 * @param left how much is in it: the sum of its book, never below 0
 * @param film how much film went through it
 * @param discarded whether it is off the shelf
 * @param lastTouched the moment of the last line
 */
public record Bottle(
    BottleLabel label, Volume left, UnitOfUse film, boolean discarded, Instant lastTouched) {

  /**
   * Folds a book.
   *
   * @param entries in order, at least the first filling
   */
  public static Bottle of(BottleLabel label, List<BottleEntry> entries) {
    double millilitres = 0;
    UnitOfUse film = UnitOfUse.NONE;
    boolean discarded = false;
    Instant last = Instant.EPOCH;
    for (BottleEntry entry : entries) {
      millilitres = Math.max(0, millilitres + entry.changeMillilitres());
      film = film.plus(entry.film());
      discarded = entry.kind() == BottleEntry.Kind.DISCARDED;
      last = entry.at();
    }
    return new Bottle(label, Volume.ofMillilitres(millilitres), film, discarded, last);
  }

  /** How full it is, 0 to 1; more than the label says counts as full. */
  public double fullness() {
    return Math.min(1, left.ratioTo(label.full()));
  }
}
