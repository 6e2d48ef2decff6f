package org.wetside.benchmark;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.wetside.app.bench.Alarm;

/** A clock held in hand, with an alarm that never rings: who looks at a run moves it on. */
final class HeldClock extends Clock implements Alarm {
  private Instant now;

  HeldClock(Instant begin) {
    now = begin;
  }

  void moveTo(Instant later) {
    now = later;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public void set(Instant when, Runnable ring) {}

  @Override
  public void close() {}

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
