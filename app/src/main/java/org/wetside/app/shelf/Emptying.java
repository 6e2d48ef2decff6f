package org.wetside.app.shelf;

import org.wetside.store.Session;

/** How a bottle leaves the shelf: its line in the ledger, and where what is in it goes. */
public interface Emptying {
  /**
   * Empties it within a transaction.
   *
   * @param letter of a bottle on the shelf
   * @param why in words
   */
  void empty(Session session, String letter, String why);
}
