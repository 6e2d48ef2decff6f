package org.wetside.core.process;

import java.time.Duration;
import java.util.Optional;

/**
 * How long a step may last at most when nothing else was said. Common practice: stop bath to 2 min,
 * fixer to twice its time but at most 10 min, washes to 60 min; a developer never.
 */
public final class LongestTime {
  private static final Duration STOP = Duration.ofMinutes(2);
  private static final Duration FIXER = Duration.ofMinutes(10);
  private static final Duration WASH = Duration.ofMinutes(60);

  private LongestTime() {}

  /**
   * The limit of a step of this kind and time; empty when it may not be lengthened. Never below the
   * time itself.
   */
  public static Optional<Duration> of(StepKind kind, Duration time) {
    if (kind.developing() || !kind.wet()) {
      return Optional.empty();
    }
    Duration limit =
        switch (kind) {
          case STOP_BATH, RINSE -> STOP;
          case FIXER -> shorter(time.multipliedBy(2), FIXER);
          case WASH -> WASH;
          default -> time.multipliedBy(2);
        };
    return Optional.of(limit.compareTo(time) < 0 ? time : limit);
  }

  private static Duration shorter(Duration one, Duration other) {
    return one.compareTo(other) <= 0 ? one : other;
  }
}
