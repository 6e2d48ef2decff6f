package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** How times stand in answers. */
final class Spoken {
  private Spoken() {}

  /** {@code 6:58}. */
  static String clock(Duration time) {
    long seconds = Math.round(time.toMillis() / 1000.0);
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }

  /** An instant to the second, in UTC; the edge turns it into the reader's clock. */
  static String moment(Instant at) {
    return at.truncatedTo(ChronoUnit.SECONDS).toString();
  }
}
