package org.wetside.app.keeping;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;

/** A clock moved by hand, from any thread. */
final class MovedClock extends Clock {
  private final AtomicReference<Instant> now;

  MovedClock(String at) {
    now = new AtomicReference<>(Instant.parse(at));
  }

  void pass(Duration time) {
    now.updateAndGet(was -> was.plus(time));
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
