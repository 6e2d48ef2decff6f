package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;

/**
 * A stretch of time in which one tank wants both hands.
 *
 * @param tank its name
 * @param step index of the step it belongs to
 * @param want what for
 * @param from the first moment
 * @param to the last moment, not before {@code from}
 */
public record AttentionWindow(String tank, int step, Want want, Instant from, Instant to) {
  /**
   * Hands that have put one tank down want so long before they take up another. Common practice;
   * our own choice of figure.
   */
  public static final Duration APART = Duration.ofSeconds(10);

  public AttentionWindow {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("a window ends at " + to + ", before " + from);
    }
  }

  /** Whether the other comes nearer than {@link #APART}, or at the same time. */
  public boolean clashesWith(AttentionWindow other) {
    return from.minus(APART).isBefore(other.to) && other.from.isBefore(to.plus(APART));
  }
}
