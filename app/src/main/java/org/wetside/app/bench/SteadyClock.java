package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.LongSupplier;

/**
 * A wall clock that is looked at once and then goes on by a monotonic counter: when the machine's
 * clock is set while a run goes on, the run does not jump with it.
 */
public final class SteadyClock extends Clock {
  private final Clock wall;
  private final LongSupplier nanos;
  private final Instant begin;
  private final long beginNanos;

  private SteadyClock(Clock wall, LongSupplier nanos, Instant begin, long beginNanos) {
    this.wall = wall;
    this.nanos = nanos;
    this.begin = begin;
    this.beginNanos = beginNanos;
  }

  /**
   * @param wall looked at now, and for its zone
   * @param nanos a monotonic counter in nanoseconds
   */
  public SteadyClock(Clock wall, LongSupplier nanos) {
    this(wall, nanos, wall.instant(), nanos.getAsLong());
  }

  @Override
  public Instant instant() {
    return begin.plusNanos(nanos.getAsLong() - beginNanos);
  }

  @Override
  public ZoneId getZone() {
    return wall.getZone();
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return new SteadyClock(wall.withZone(zone), nanos, begin, beginNanos);
  }
}
