package org.wetside.app.shelf;

import java.time.Clock;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.store.Session;

/**
 * To where nobody has said: its ledger alone knows of it.
 *
 * @param clock tells when
 */
public record EmptyUnsaid(Clock clock) implements Emptying {
  @Override
  public void empty(Session session, String letter, String why) {
    ChangeBottle.enter(session, letter, why, new BottleEvent.Discarded(), clock);
  }
}
