package org.wetside.core.shelf;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * How long a solution keeps, as a table says it.
 *
 * @param solution the table's name for it
 * @param words the table's words
 * @param keeps the figure in them; empty where they hold none
 * @param storage how it has to be kept for that
 * @param singleUse whether it is not to be kept at all
 * @param standing how it is known
 * @param citation where it stands
 */
public record KeepingTime(
    String solution,
    String words,
    Optional<Period> keeps,
    Storage storage,
    boolean singleUse,
    Standing standing,
    Citation citation) {
  /** The last day on which it is still good; empty where the table gives no figure. */
  public Optional<LocalDate> lastDay(LocalDate from) {
    return singleUse ? Optional.of(from) : keeps.map(from::plus);
  }

  /** For example {@code D-76 keeps 6 months full, stoppered}. */
  public String spoken() {
    return solution + ", " + storage.word() + ": " + words;
  }
}
