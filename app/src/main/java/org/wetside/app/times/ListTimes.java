package org.wetside.app.times;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.store.Database;

/** The user's own times that are in use. */
public final class ListTimes {
  private final TimeShelf shelf;

  /** From this home. */
  public ListTimes(Supplier<Database> database) {
    shelf = new TimeShelf(database);
  }

  /**
   * An entry with its id.
   *
   * @param id for withdrawing it
   * @param line as it could be typed
   */
  public record Listed(String id, OwnLine line) {}

  /** All of them, in the order they were kept. */
  public List<Listed> inUse() {
    TimeShelf.Now now = shelf.now();
    return now.library().own().entries().stream()
        .map(entry -> new Listed(entry.id(), OwnText.line(entry, now.films())))
        .toList();
  }
}
