package org.wetside.app.waste;

import java.util.Optional;
import org.wetside.app.shelf.Emptying;
import org.wetside.store.Session;

/**
 * Into a jug, as part of something greater that discards the bottle; refused as a pouring of its
 * own.
 *
 * @param pour pours
 * @param jug name of the jug
 */
record EmptyIntoJug(PourWaste pour, String jug) implements Emptying {
  @Override
  public void empty(Session session, String letter, String why) {
    PourWaste.Outcome unused = pour.fromBottle(session, jug, letter, Optional.empty(), why);
  }
}
