package org.wetside.app.shelf;

import java.time.Clock;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.LedgerRules;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** Puts a bottle on the shelf. */
public final class AddBottle {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public AddBottle(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Puts it there with the first line of its book.
   *
   * @param filled how much is in it now, at most what it holds
   * @throws BadValueException when the letter stands on another bottle, it holds less, or a day is
   *     still to come
   */
  public void add(BottleLabel label, Volume filled) {
    database.change(session -> add(session, label, filled, clock));
  }

  /** The same inside a transaction that does more. */
  public static void add(Session session, BottleLabel label, Volume filled, Clock clock) {
    LedgerRules.requireNew(label, filled, Today.of(clock));
    Bottles bottles = new Bottles(session);
    Optional<Bottle> other = bottles.find(label.letter());
    if (other.isPresent()) {
      throw new BadValueException(
          "letter of the bottle",
          label.letter(),
          "it stands on " + other.get().label().spoken() + "; choose another");
    }
    bottles.add(label, filled, clock.instant());
  }
}
