package org.wetside.core.shelf;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * The moment, and where the person is: so that every day in a sentence is the day of their wall,
 * late in the evening too.
 *
 * @param moment now
 * @param zone where the person is
 */
public record HereNow(Instant moment, ZoneId zone) {
  /** The day it is there. */
  public LocalDate today() {
    return day(moment);
  }

  /** The day it was there at that moment. */
  public LocalDate day(Instant at) {
    return LocalDate.ofInstant(at, zone);
  }
}
