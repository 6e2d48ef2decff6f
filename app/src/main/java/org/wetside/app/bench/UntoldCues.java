package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cues that were due while the server was away. A screen may have gone on by its own plan and told
 * them; it says so as soon as it finds the server again. Until then they wait here.
 */
final class UntoldCues {
  /** A screen looks for the server every two seconds. */
  static final Duration ASKED_FOR = Duration.ofSeconds(10);

  private final Map<Long, Waiting> waiting = new HashMap<>();

  private record Waiting(Instant from, Instant until, List<Outage.Missed> cues) {}

  /** The server is back: whoever told these cues has a little time to say so. */
  void ask(long run, Outage outage, Instant now) {
    if (!outage.cues().isEmpty()) {
      waiting.put(run, new Waiting(outage.from(), now.plus(ASKED_FOR), outage.cues()));
    }
  }

  /** Whether a screen that has led without a break since a moment told what waits. */
  boolean toldBy(long run, Instant leadingSince) {
    Waiting asked = waiting.get(run);
    if (asked == null || leadingSince.isAfter(asked.from())) {
      return false;
    }
    waiting.remove(run);
    return true;
  }

  /** What nobody told, once no screen is waited for any more. */
  List<Outage.Missed> missed(long run, Instant now) {
    Waiting asked = waiting.get(run);
    if (asked == null || now.isBefore(asked.until())) {
      return List.of();
    }
    waiting.remove(run);
    return asked.cues();
  }

  /** When the next waiting ends. */
  Optional<Instant> next() {
    return waiting.values().stream().map(Waiting::until).min(Instant::compareTo);
  }
}
