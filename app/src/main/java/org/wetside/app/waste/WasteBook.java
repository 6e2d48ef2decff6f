package org.wetside.app.waste;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.store.Database;

/** Front door of the book of waste in one home. */
public final class WasteBook {
  private final Supplier<Database> database;
  private final Clock clock;

  /** Over one home; nothing is opened before it is needed. */
  public WasteBook(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** The jugs for waste. */
  public KeepJugs keepJugs() {
    return new KeepJugs(database, clock);
  }

  /** Pours used chemistry into a jug. */
  public PourWaste pourWaste() {
    return new PourWaste(database, clock);
  }

  /** Hands a jug in. */
  public HandIn handIn() {
    return new HandIn(database, clock);
  }
}
