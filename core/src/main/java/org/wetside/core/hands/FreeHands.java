package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunState;

/**
 * Finds what of one run must last longer so that its hands and those of other runs stay {@link
 * AttentionWindow#APART} apart. Only what may be lengthened is lengthened, within its limit; a
 * developer never is. Among all ways, in whole seconds, it takes the one with the fewest clashes,
 * then the one that moves the end of the run least.
 */
public final class FreeHands {
  /** Nobody is served by a film that waits longer than this for a pair of hands. */
  public static final Duration MOST = Duration.ofMinutes(5);

  private static final int[] HORIZONS_S = {60, (int) MOST.toSeconds()};

  private FreeHands() {}

  /**
   * The repair of one run.
   *
   * @param tank its tank
   * @param state the run; one that is not running is not moved
   * @param others when the other runs want the hands
   * @param now what is over by then is not looked at
   * @param ifReady the first pour to assume while the run is ready; it is then looked at as if it
   *     had just begun
   */
  public static Repair of(
      String tank, RunState state, List<AttentionWindow> others, Instant now, Instant ifReady) {
    // Hands that were wanted a moment ago are not free yet.
    List<AttentionWindow> busy = Attention.after(now.minus(AttentionWindow.APART), others);
    Repair nothing =
        new Repair(
            List.of(),
            Clash.between(Attention.after(now, Attention.of(tank, state, ifReady)), busy));
    boolean movable = state.phase() == Phase.RUNNING || state.phase() == Phase.READY;
    if (nothing.clashes().isEmpty() || !movable) {
      return nothing;
    }
    Stretching stretching = new Stretching(tank, state, busy, now, ifReady);
    Repair best = nothing;
    for (int horizon : HORIZONS_S) {
      List<Lengthening> moves = stretching.within(horizon);
      if (!moves.isEmpty()) {
        Repair found = new Repair(moves, stretching.clashesAfter(moves));
        best = found.betterThan(best) ? found : best;
      }
      if (best.clashes().isEmpty() || horizon >= stretching.room()) {
        return best;
      }
    }
    return best;
  }
}
