package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.process.Bout;
import org.wetside.core.process.Bouts;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/** When a run wants the hands. */
public final class Attention {
  private Attention() {}

  /**
   * All windows of a run, past and expected, in order.
   *
   * @param tank its name
   * @param state the run
   * @param ifReady the first pour to assume while it is ready
   */
  public static List<AttentionWindow> of(String tank, RunState state, Instant ifReady) {
    List<Placement.Moments> placed = Placement.of(state, ifReady).steps();
    List<AttentionWindow> windows = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      addStep(windows, tank, i, state.plan().step(i), placed.get(i));
    }
    return windows;
  }

  /** Those that are not over. */
  public static List<AttentionWindow> after(Instant now, List<AttentionWindow> windows) {
    return windows.stream().filter(window -> window.to().isAfter(now)).toList();
  }

  /** The bouts in which a step wants hands; a drum on rollers turns by itself. */
  static List<Bout> bouts(Step step, Duration untilDrain) {
    return step.agitation().manner() == Manner.ROTARY
        ? List.of()
        : Bouts.of(step.agitation(), untilDrain);
  }

  private static void addStep(
      List<AttentionWindow> windows, String tank, int index, Step step, Placement.Moments at) {
    if (!step.kind().wet()) {
      windows.add(window(tank, index, Want.POUR, at.begin(), at.end()));
      return;
    }
    windows.add(window(tank, index, Want.POUR, at.begin(), at.full()));
    for (Bout bout : bouts(step, Duration.between(at.full(), at.drain()))) {
      Instant from = at.full().plus(bout.inStep());
      windows.add(window(tank, index, Want.AGITATE, from, from.plus(bout.length())));
    }
    windows.add(window(tank, index, Want.DRAIN, at.drain(), at.end()));
  }

  /** A press can put moments on top of one another, never the end before the beginning. */
  private static AttentionWindow window(
      String tank, int step, Want want, Instant from, Instant to) {
    return new AttentionWindow(tank, step, want, from, to.isBefore(from) ? from : to);
  }
}
