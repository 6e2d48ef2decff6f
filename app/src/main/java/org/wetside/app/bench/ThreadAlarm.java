package org.wetside.app.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Rings on a thread of its own, which ends with the program. */
public final class ThreadAlarm implements Alarm {
  private final Clock clock;
  private final ScheduledExecutorService thread;
  private @Nullable ScheduledFuture<?> next;

  /**
   * @param clock by which the wait is measured
   */
  public ThreadAlarm(Clock clock) {
    this(clock, "bench");
  }

  /**
   * @param clock by which the wait is measured
   * @param name of its thread
   */
  public ThreadAlarm(Clock clock, String name) {
    this.clock = clock;
    thread =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread bell = new Thread(work, name);
              bell.setDaemon(true);
              return bell;
            });
  }

  @Override
  public synchronized void set(Instant when, Runnable ring) {
    if (thread.isShutdown()) {
      return;
    }
    if (next != null) {
      next.cancel(false);
    }
    long wait = Math.max(0, Duration.between(clock.instant(), when).toMillis());
    next = thread.schedule(ring, wait, TimeUnit.MILLISECONDS);
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
