package org.wetside.core.wash;

import java.time.Duration;
import org.wetside.core.quantity.TimeSpan;

/**
 * The rule of half-times: in clean water, film keeps half of its fixer after each half-time
 * (sources CH-S03, CH-S07). It takes the water as always clean, so it too is the best that can be.
 */
public final class HalfTimeRule {
  private HalfTimeRule() {}

  /** The part that is left after a time, dimensionless. */
  public static double left(Duration time, Duration halfTime) {
    return Math.pow(2, -TimeSpan.toSeconds(time) / TimeSpan.toSeconds(halfTime));
  }
}
