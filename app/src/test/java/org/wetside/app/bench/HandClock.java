package org.wetside.app.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/** A clock and an alarm moved by hand: an evening passes in a millisecond. */
final class HandClock extends Clock implements Alarm {
  private Instant now;
  private @Nullable Instant ringAt;
  private @Nullable Runnable ring;

  HandClock(Instant now) {
    this.now = now;
  }

  /** Moves on, ringing at every wish on the way. */
  void pass(Duration time) {
    Instant until = now.plus(time);
    while (ringAt != null && !ringAt.isAfter(until)) {
      now = ringAt.isAfter(now) ? ringAt : now;
      Runnable due = ring;
      ringAt = null;
      if (due != null) {
        due.run();
      }
    }
    now = until;
  }

  /** Moves on while nobody is there to hear a ring. */
  void passUnwatched(Duration time) {
    ringAt = null;
    now = now.plus(time);
  }

  @Override
  public void set(Instant when, Runnable what) {
    ringAt = when;
    ring = what;
  }

  @Override
  public void close() {
    ringAt = null;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
