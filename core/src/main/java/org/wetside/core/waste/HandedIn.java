package org.wetside.core.waste;

import java.time.LocalDate;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A jug that was handed in and came back empty.
 *
 * @param on the day
 * @param to whom, 1 to 100 characters
 * @param volume what was in it
 * @param note in words; may be empty
 */
public record HandedIn(LocalDate on, String to, Volume volume, String note) {
  public HandedIn {
    to = to.strip();
    note = note.strip();
    if (to.isEmpty() || to.length() > 100) {
      throw new BadValueException("handed in to", to, "say to whom, 1 to 100 characters");
    }
  }
}
