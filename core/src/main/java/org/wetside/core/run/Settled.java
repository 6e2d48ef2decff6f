package org.wetside.core.run;

import java.time.Instant;

/** The moment an event is given in the record. */
public final class Settled {
  private Settled() {}

  /**
   * The screen's moment, not later than receipt and not earlier than the last event of that step.
   *
   * @param said the screen's moment, corrected by its measured offset
   */
  public static Instant moment(RunState state, int step, Instant said, Instant receivedAt) {
    Instant latest = said.isAfter(receivedAt) ? receivedAt : said;
    Instant earliest = state.lastMomentOf(step).orElse(latest);
    Instant settled = latest.isBefore(earliest) ? earliest : latest;
    return settled.isAfter(receivedAt) ? receivedAt : settled;
  }
}
