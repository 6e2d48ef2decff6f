package org.wetside.app.times;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.OwnTimes;

/** Takes one of the user's own times out of use; it stays in the record. */
public final class WithdrawTime {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public WithdrawTime(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Withdraws it.
   *
   * @throws BadValueException when no such entry is in use
   */
  public void withdraw(String id) {
    boolean found =
        database
            .get()
            .inTransaction(session -> new OwnTimes(session).withdraw(id, clock.instant()));
    if (!found) {
      throw new BadValueException("entry", id, "none of your own times in use has this id");
    }
  }
}
