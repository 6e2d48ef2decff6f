package org.wetside.app.shelf;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.wetside.core.shelf.HereNow;

/** The day it is where the person is. */
public final class Today {
  private Today() {}

  /** By the wall clock, in the zone of this machine. */
  public static LocalDate of(Clock clock) {
    return now(clock).today();
  }

  /** The moment by that clock, in the zone of this machine. */
  public static HereNow now(Clock clock) {
    return at(clock.instant());
  }

  /** That moment, in the zone of this machine. */
  public static HereNow at(Instant moment) {
    return new HereNow(moment, ZoneId.systemDefault());
  }
}
