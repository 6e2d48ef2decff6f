package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.wetside.core.run.RunState;

/**
 * Looks through every way to lengthen the steps of one run in whole seconds, from step to step: for
 * each delay with which a step can begin it keeps the way that clashes least so far.
 */
final class Stretching {
  private static final int NEVER = Integer.MAX_VALUE;

  /** A clash weighs more than any number of steps that are lengthened. */
  private static final int CLASH = 1000;

  private final String tank;
  private final RunState state;
  private final List<AttentionWindow> others;
  private final Instant now;
  private final Instant ifReady;
  private final int first;
  private final List<StretchedStep> steps = new ArrayList<>();

  Stretching(
      String tank, RunState state, List<AttentionWindow> others, Instant now, Instant ifReady) {
    this.tank = tank;
    this.state = state;
    this.others = others;
    this.now = now;
    this.ifReady = ifReady;
    this.first = Math.max(0, state.current());
    BusyHands busy = new BusyHands(others, now);
    for (int i = first; i < state.steps().size(); i++) {
      steps.add(StretchedStep.of(state, i, busy, ifReady));
    }
  }

  /** The most by which the whole run can be lengthened, in seconds. */
  int room() {
    return steps.stream().mapToInt(StretchedStep::limit).sum();
  }

  /** What clashes when these steps have been lengthened. */
  List<Clash> clashesAfter(List<Lengthening> moves) {
    RunState longer = Lengthened.state(state, moves);
    return Clash.between(Attention.after(now, Attention.of(tank, longer, ifReady)), others);
  }

  /** The best way that makes the run end at most so many seconds later. */
  List<Lengthening> within(int horizon) {
    int most = Math.min(horizon, room());
    int[] cost = new int[most + 1];
    Arrays.fill(cost, NEVER);
    cost[0] = 0;
    List<int[]> chosen = new ArrayList<>();
    for (StretchedStep step : steps) {
      int[] next = new int[most + 1];
      int[] extra = new int[most + 1];
      Arrays.fill(next, NEVER);
      step.prepare(most);
      for (int late = 0; late <= most; late++) {
        if (cost[late] != NEVER) {
          goOn(step, late, cost[late], next, extra);
        }
      }
      chosen.add(extra);
      cost = next;
    }
    return wayTo(leastClashing(cost), chosen);
  }

  private static void goOn(StretchedStep step, int late, int soFar, int[] next, int[] extra) {
    int most = Math.min(step.limit(), next.length - 1 - late);
    StretchedStep.Walk walk = step.begunLate(late);
    for (int longer = 0; longer <= most; longer++) {
      int cost = soFar + CLASH * walk.clashes(longer) + (longer > 0 ? 1 : 0);
      if (cost < next[late + longer]) {
        next[late + longer] = cost;
        extra[late + longer] = longer;
      }
    }
  }

  private static int leastClashing(int[] cost) {
    int best = 0;
    for (int late = 1; late < cost.length; late++) {
      if (cost[late] != NEVER && cost[late] / CLASH < cost[best] / CLASH) {
        best = late;
      }
    }
    return best;
  }

  private List<Lengthening> wayTo(int end, List<int[]> chosen) {
    List<Lengthening> moves = new ArrayList<>();
    int late = end;
    for (int i = chosen.size() - 1; i >= 0; i--) {
      int longer = chosen.get(i)[late];
      if (longer > 0) {
        moves.add(0, new Lengthening(first + i, Duration.ofSeconds(longer)));
      }
      late -= longer;
    }
    return moves;
  }
}
