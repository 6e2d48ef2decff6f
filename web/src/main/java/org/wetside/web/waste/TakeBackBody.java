package org.wetside.web.waste;

import org.jspecify.annotations.Nullable;
import org.wetside.app.waste.PourWaste;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.waste.FilledJug;

/**
 * A pouring that was not one.
 *
 * @param line its number in the book
 * @param reason why
 */
public record TakeBackBody(@Nullable Long line, @Nullable String reason) {
  /**
   * Does it.
   *
   * @throws BadValueException when there is none of that number in the jug, or no reason
   */
  public FilledJug to(PourWaste pour, String jug) {
    if (line == null) {
      throw new BadValueException("pouring", "nothing", "say its number in the book");
    }
    return pour.takeBack(jug, line, reason == null ? "" : reason);
  }
}
