package org.wetside.core.shelf;

import java.time.Instant;

/**
 * A test that was made, and when.
 *
 * @param at when
 * @param what which test, and what it showed
 */
public record TestSeen(Instant at, BottleEvent.Tested what) {
  /** Whether it was passed. */
  public boolean passed() {
    return what.passed();
  }
}
