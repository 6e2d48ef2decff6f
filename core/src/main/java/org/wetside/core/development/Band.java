package org.wetside.core.development;

import java.time.Duration;
import org.wetside.core.quantity.TimeSpan;

/**
 * Nine in ten: the span a time lies in with 90 % probability.
 *
 * @param low the short end
 * @param high the long end
 */
public record Band(Duration low, Duration high) {
  /** Standard deviations on either side of the middle that hold 90 %. */
  static final double NINETY_PERCENT = 1.645;

  /** From a time and its standard deviation in ln(time). */
  static Band around(double seconds, double lnSd) {
    double factor = Math.exp(NINETY_PERCENT * lnSd);
    return new Band(TimeSpan.ofSeconds(seconds / factor), TimeSpan.ofSeconds(seconds * factor));
  }

  /** Whether the two have no time in common. */
  public boolean isApartFrom(Band other) {
    return high.compareTo(other.low) < 0 || other.high.compareTo(low) < 0;
  }
}
