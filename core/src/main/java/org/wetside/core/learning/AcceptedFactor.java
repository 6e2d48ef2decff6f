package org.wetside.core.learning;

import java.time.Instant;
import org.wetside.core.development.OwnFactor;

/**
 * A factor in use.
 *
 * @param factor the factor, with the figures of the day it was accepted
 * @param at when that was
 */
public record AcceptedFactor(OwnFactor factor, Instant at) {
  /** What was believed when it was accepted. */
  public Belief belief() {
    return new Belief(factor.lnFactor(), factor.lnSd(), factor.rolls());
  }

  /** Whether it is the factor of that film in that developer. */
  public boolean isOf(FilmInDeveloper pair) {
    return factor.filmCode().equals(pair.filmCode()) && factor.developer().equals(pair.developer());
  }
}
