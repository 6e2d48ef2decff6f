package org.wetside.acceptance.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that goes on when it is told to. */
final class HandClock extends Clock {
  private final AtomicReference<Instant> now =
      new AtomicReference<>(Instant.parse("2026-01-14T19:00:00Z"));

  /** Goes on. */
  void pass(Duration time) {
    now.updateAndGet(before -> before.plus(time));
  }

  @Override
  public Instant instant() {
    return Objects.requireNonNull(now.get());
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
