package org.wetside.app.times;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.development.TimeEntry;
import org.wetside.store.Database;

/** Gives the user's own times out as a file that {@link ImportTimes} takes in. */
public final class ExportTimes {
  private final TimeShelf shelf;

  /** From this home. */
  public ExportTimes(Supplier<Database> database) {
    shelf = new TimeShelf(database);
  }

  /** The file; only a header when there are none. */
  public String csv() {
    TimeShelf.Now now = shelf.now();
    List<TimeEntry> own = now.library().own().entries();
    return TimesFile.write(own.stream().map(entry -> OwnText.line(entry, now.films())).toList());
  }
}
