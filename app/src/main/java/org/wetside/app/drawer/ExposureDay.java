package org.wetside.app.drawer;

import java.time.Clock;
import java.time.LocalDate;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.quantity.BadValueException;

/** A roll was exposed before it was put into the drawer. */
final class ExposureDay {
  private ExposureDay() {}

  /**
   * Refuses a day that is still to come; one day ahead is let pass, for those who crossed the date
   * line.
   */
  static void refuseFuture(RollDraft said, Clock clock) {
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    if (said.exposedOn().filter(day -> day.isAfter(today.plusDays(1))).isPresent()) {
      throw new BadValueException(
          "day of exposure",
          said.exposedOn().get().toString(),
          "it is still to come; today is " + today);
    }
  }
}
