package org.wetside.core.shelf;

import java.time.Instant;
import java.util.List;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/**
 * A bottle as its ledger tells it.
 *
 * @param label what stands on it
 * @param state what its ledger comes to
 */
public record Bottle(BottleLabel label, BottleState state) {
  /** A bottle and its ledger, oldest line first. */
  public static Bottle of(BottleLabel label, List<LedgerLine> ledger) {
    return new Bottle(label, BottleState.of(label.bath(), ledger));
  }

  /** The same after one more line. */
  public Bottle after(LedgerLine line) {
    return new Bottle(label, state.after(line, label.bath()));
  }

  /** How much is in it. */
  public Volume left() {
    return state.left();
  }

  /** How much film went through it. */
  public UnitOfUse film() {
    return state.film();
  }

  /** Whether it is off the shelf. */
  public boolean discarded() {
    return state.discarded();
  }

  /** The moment of the last line. */
  public Instant lastTouched() {
    return state.lastTouched();
  }

  /** How full it is, 0 to 1; more than the label says counts as full. */
  public double fullness() {
    return Math.min(1, left().ratioTo(label.full()));
  }

  /** How it keeps, as full as it is. */
  public Storage storage() {
    return label.storage().at(fullness());
  }
}
