package org.wetside.acceptance.job;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.Alarm;

/** Time that runs so many times as fast as the real one, for the clock and the alarm alike. */
final class FastTime extends Clock implements Alarm {
  private final int times;
  private final Instant begin = Instant.parse("2026-01-14T19:00:00Z");
  private final long beginNanos = System.nanoTime();
  private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor();
  private @Nullable ScheduledFuture<?> next;

  FastTime(int times) {
    this.times = times;
  }

  @Override
  public Instant instant() {
    return begin.plusNanos((System.nanoTime() - beginNanos) * times);
  }

  @Override
  public synchronized void set(Instant when, Runnable ring) {
    if (next != null) {
      next.cancel(false);
    }
    long wait = Math.max(0, Duration.between(instant(), when).toNanos() / times);
    next = thread.schedule(ring, wait, TimeUnit.NANOSECONDS);
  }

  @Override
  public void close() {
    thread.shutdownNow();
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
