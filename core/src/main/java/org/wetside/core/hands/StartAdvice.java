package org.wetside.core.hands;

import java.time.Instant;
import java.util.List;

/**
 * When a run is best begun beside others.
 *
 * @param from the earliest moment, in whole seconds, from which the hands are never wanted twice
 * @param until the last moment of the same stretch, at most a minute after {@code from}
 * @param moves what of the run then lasts longer
 * @param ifNow what clashes if it is begun at once and lengthened as well as can be
 */
public record StartAdvice(Instant from, Instant until, List<Lengthening> moves, List<Clash> ifNow) {
  public StartAdvice {
    moves = List.copyOf(moves);
    ifNow = List.copyOf(ifNow);
  }
}
