package org.wetside.core.shelf;

import java.time.Instant;

/**
 * A roll that was in a bath, and what the bath's tests say of it.
 *
 * @param film the roll
 * @param run the run; may be empty
 * @param at when
 * @param mark whether it is vouched for
 */
public record MarkedRoll(FilmUse film, String run, Instant at, RollMark mark) {
  /** The same with another mark. */
  public MarkedRoll marked(RollMark other) {
    return new MarkedRoll(film, run, at, other);
  }
}
