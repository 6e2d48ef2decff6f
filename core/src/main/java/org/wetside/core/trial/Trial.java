package org.wetside.core.trial;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A test that was begun. It is open until it has an end.
 *
 * @param id its number
 * @param kind which test
 * @param bottle letter of the bottle; empty for a test of film
 * @param rolls the rolls whose washing is tested; empty for a test of a bottle
 * @param clip what was said of the clip; only for a clearing time
 * @param startedAt when the clock began to run
 * @param end what came of it; empty while it is open
 */
public record Trial(
    long id,
    TrialKind kind,
    String bottle,
    List<String> rolls,
    Optional<ClipWish> clip,
    Instant startedAt,
    Optional<TrialEnd> end) {
  /** Keeps an unmodifiable copy. */
  public Trial {
    rolls = List.copyOf(rolls);
  }

  /** Whether it still runs. */
  public boolean isOpen() {
    return end.isEmpty();
  }

  /** How long it has run at that moment; never negative, also when the wall clock was put back. */
  public Duration elapsed(Instant now) {
    Duration since = Duration.between(startedAt, now);
    return since.isNegative() ? Duration.ZERO : since;
  }
}
