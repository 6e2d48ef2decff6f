package org.wetside.app.screens;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Screens;

/** Shuts a screen out again. */
public final class RemoveScreen {
  private final Supplier<Database> database;
  private final Clock clock;

  /** Over one home. */
  public RemoveScreen(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Shuts it out from this moment on; its key is worth nothing any more.
   *
   * @throws BadValueException when no screen of that number is let in
   */
  public void remove(long id) {
    boolean removed =
        database.get().inTransaction(session -> new Screens(session).remove(id, clock.instant()));
    if (!removed) {
      throw new BadValueException("screen", Long.toString(id), "none of that number is let in");
    }
  }
}
