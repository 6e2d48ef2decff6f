package org.wetside.app.times;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;

/** Takes in a file of times: the whole of it, or nothing. */
public final class ImportTimes {
  private final OwnBook book;

  /** Into this home. */
  public ImportTimes(Supplier<Database> database, Clock clock) {
    book = new OwnBook(new TimeShelf(database), clock);
  }

  /**
   * Takes in a file.
   *
   * @param bytes CSV in UTF-8 with the columns
   *     film,developer,dilution,ei,temp,minutes,vessel,agitation,contrast,source
   * @return what was kept, or every row that stands in the way
   * @throws BadValueException when the file is no such file at all
   */
  public KeepOutcome from(byte[] bytes) {
    List<RowProblem> problems = new ArrayList<>();
    Map<Integer, OwnLine> lines = TimesFile.read(text(bytes), problems);
    return book.keep(lines, problems);
  }

  /**
   * The text of such a file.
   *
   * @throws BadValueException when it is not UTF-8
   */
  public static String text(byte[] bytes) {
    return TimesFile.decode(bytes);
  }
}
