package org.wetside.app.times;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.wetside.store.Database;

/** Keeps one line from a leaflet. */
public final class AddTime {
  private final OwnBook book;

  /** Into this home. */
  public AddTime(Supplier<Database> database, Clock clock) {
    book = new OwnBook(new TimeShelf(database), clock);
  }

  /** Keeps the line, or says everything that is wrong with it. */
  public KeepOutcome add(OwnLine line) {
    return book.keep(Map.of(0, line), List.of());
  }
}
