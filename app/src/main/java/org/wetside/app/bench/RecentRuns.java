package org.wetside.app.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.run.Hands;

/**
 * The last few runs that are over, as they were left: the Plan and the Bench look at them again and
 * again, and folding one anew takes many times longer than showing it.
 */
final class RecentRuns {
  private static final int MOST = 24;

  /** A run with what is known of pouring and draining with its tank. */
  record Left(LiveRun run, Hands hands) {}

  private final Map<Long, Left> left = new LinkedHashMap<>();

  void put(long id, Left run) {
    left.put(id, run);
    if (left.size() > MOST) {
      left.remove(left.keySet().iterator().next());
    }
  }

  /** Hands a run out and forgets it: whoever has it may change it and puts it back. */
  Optional<Left> take(long id) {
    return Optional.ofNullable(left.remove(id));
  }
}
