package org.wetside.core.hands;

import java.time.Duration;
import java.util.List;

/**
 * What of one run shall last longer so that another finds the hands free.
 *
 * @param moves the lengthenings, in the order of the steps; empty when nothing is to be moved, or
 *     nothing can be
 * @param clashes what clashes even then, the earliest first
 */
public record Repair(List<Lengthening> moves, List<Clash> clashes) {
  public Repair {
    moves = List.copyOf(moves);
    clashes = List.copyOf(clashes);
  }

  /** How much later the run ends. */
  public Duration later() {
    return moves.stream().map(Lengthening::by).reduce(Duration.ZERO, Duration::plus);
  }

  /** Whether this leaves fewer clashes, or as many and moves less. */
  public boolean betterThan(Repair other) {
    return clashes.size() != other.clashes.size()
        ? clashes.size() < other.clashes.size()
        : later().compareTo(other.later()) < 0;
  }
}
