package org.wetside.core.process;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;

/**
 * One bout of agitation.
 *
 * @param count inversions (or lifts) in it, at least 1
 * @param length how long it takes, above zero
 * @param counted whether the person counts turns; otherwise seconds, and the count only says how
 *     many turns fit
 */
public record Cycle(int count, Duration length, boolean counted) {
  /** One inversion takes 1.5 s (common practice, editable). */
  public static final Duration PACE = Duration.ofMillis(1500);

  public Cycle {
    if (count < 1) {
      throw new BadValueException("agitation cycle", count + " inversions", "at least 1");
    }
    if (length.isZero() || length.isNegative()) {
      throw new BadValueException("agitation cycle", length.toMillis() + " ms", "above 0 s");
    }
  }

  /** Counted in turns at a pace. */
  public static Cycle ofInversions(int count, Duration pace) {
    return new Cycle(count, pace.multipliedBy(count), true);
  }

  /** Counted in seconds. */
  public static Cycle ofLength(Duration length) {
    return new Cycle(Math.max(1, (int) (length.toMillis() / PACE.toMillis())), length, false);
  }

  /** {@code 5×} or {@code 30 s}. */
  public String words() {
    return counted ? count + "×" : Words.seconds(length);
  }
}
