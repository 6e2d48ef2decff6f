package org.wetside.core.shelf;

import java.time.Duration;
import java.time.Instant;

/**
 * A test that was made, and when.
 *
 * @param at when
 * @param what which test, and what it showed
 */
public record TestSeen(Instant at, BottleEvent.Tested what) {
  /** A test is believed for this long (common practice: the same evening or the one before). */
  public static final Duration BELIEVED = Duration.ofHours(48);

  /** Whether it was passed. */
  public boolean passed() {
    return what.passed();
  }
}
