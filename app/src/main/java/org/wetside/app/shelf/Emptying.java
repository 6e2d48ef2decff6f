package org.wetside.app.shelf;

import java.time.Clock;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.store.Session;

/** How a bottle leaves the shelf: its line in the ledger, and where what is in it goes. */
@FunctionalInterface
public interface Emptying {
  /**
   * Empties it within a transaction.
   *
   * @param letter of a bottle on the shelf
   * @param why in words
   */
  void empty(Session session, String letter, String why);

  /** To where nobody has said: its ledger alone knows of it. */
  static Emptying unsaid(Clock clock) {
    return (session, letter, why) ->
        ChangeBottle.enter(session, letter, why, new BottleEvent.Discarded(), clock);
  }
}
