package org.wetside.web.waste;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wetside.app.waste.HandIn;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.waste.FilledJug;
import org.wetside.web.page.FieldReader;

/**
 * A handing in.
 *
 * @param on the day, for example 2026-01-10
 * @param to whom
 * @param note anything else
 */
public record HandInBody(@Nullable String on, @Nullable String to, @Nullable String note) {
  /**
   * Does it.
   *
   * @throws BadValueException naming the part and its limit
   */
  public FilledJug to(HandIn handIn, String jug) {
    LocalDate day = FieldReader.day(on == null ? "" : on);
    return handIn.handIn(jug, day, to == null ? "" : to, note == null ? "" : note);
  }
}
