package org.wetside.app.shelf;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;

/** The day it is where the person is. */
public final class Today {
  private Today() {}

  /** By the wall clock, in the zone of this machine. */
  public static LocalDate of(Clock clock) {
    return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
  }
}
