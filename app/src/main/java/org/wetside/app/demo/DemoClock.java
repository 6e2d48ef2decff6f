package org.wetside.app.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.Alarm;
import org.wetside.app.bench.ThreadAlarm;

/**
 * A clock that lives through invented days by hand and then goes on as the real one, with the alarm
 * that belongs to it.
 */
final class DemoClock extends Clock implements Alarm {
  private final Clock real;
  private Instant now;
  private @Nullable Instant ringAt;
  private @Nullable Runnable ring;
  private @Nullable ThreadAlarm live;

  DemoClock(Clock real, Instant begin) {
    this.real = real;
    now = begin;
  }

  /** Lives on until that moment, ringing on the way. */
  void liveTo(Instant until) {
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

  /** Lives on for a while. */
  void live(Duration time) {
    liveTo(now.plus(time));
  }

  /** From here on it is the real clock. */
  void becomeReal() {
    ThreadAlarm alarm = new ThreadAlarm(real);
    live = alarm;
    if (ringAt != null && ring != null) {
      alarm.set(ringAt, ring);
    }
  }

  @Override
  public void set(Instant when, Runnable what) {
    if (live != null) {
      live.set(when, what);
    } else {
      ringAt = when;
      ring = what;
    }
  }

  @Override
  public void close() {
    if (live != null) {
      live.close();
    }
  }

  @Override
  public Instant instant() {
    return live == null ? now : real.instant();
  }

  @Override
  public ZoneId getZone() {
    return real.getZone();
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return real.withZone(zone);
  }
}
