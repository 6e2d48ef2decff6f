package org.wetside.acceptance.sound;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.Alarm;

/** A clock that is set by hand; on its way it rings whenever it was to ring. */
final class HandTime extends Clock implements Alarm {
  static final Instant BEGIN = Instant.parse("2026-01-14T19:00:00Z");

  private volatile Instant now = BEGIN;
  private @Nullable Instant when;
  private @Nullable Runnable ring;

  /** It is that late now. */
  void goOn(Instant until) {
    for (Runnable due = due(until); due != null; due = due(until)) {
      due.run();
    }
    now = until.isAfter(now) ? until : now;
  }

  private synchronized @Nullable Runnable due(Instant until) {
    Instant next = when;
    if (next == null || next.isAfter(until)) {
      return null;
    }
    now = next.isAfter(now) ? next : now;
    when = null;
    return ring;
  }

  @Override
  public synchronized void set(Instant moment, Runnable ringing) {
    when = moment;
    ring = ringing;
  }

  @Override
  public void close() {
    // nothing was started
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
