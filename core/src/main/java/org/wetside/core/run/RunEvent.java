package org.wetside.core.run;

import java.time.Instant;

/**
 * One line of a run's record. Never changed, never removed.
 *
 * @param id made by the client; a repeat is recognised by it
 * @param sequence 1, 2, 3 … without gaps
 * @param step index of the step it refers to
 * @param what what happened
 * @param occurredAt the screen's moment, corrected and settled (not after receipt, not before the
 *     last event of that step)
 * @param receivedAt when the server had it
 * @param screen name of the screen; {@link #CONDUCTOR} for what the conductor wrote
 * @param key the key that was pressed, so that a double press is known; may be empty
 */
public record RunEvent(
    String id,
    long sequence,
    int step,
    Happening what,
    Instant occurredAt,
    Instant receivedAt,
    String screen,
    String key) {
  /** The screen name of what no screen wrote. */
  public static final String CONDUCTOR = "conductor";

  /** Shorthand for the kind of {@link #what}. */
  public EventKind kind() {
    return what.kind();
  }
}
