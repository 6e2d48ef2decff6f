package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.process.Bout;
import org.wetside.core.process.Step;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/** One step of a run that may begin later and last longer, and how often it then clashes. */
final class StretchedStep {
  private static final long SECOND = 1000;

  private final Step step;
  private final Placement.Moments at;
  private final BusyHands busy;
  private final int limit;

  /** For each second of lengthening: the bouts, and whether they only continue those before. */
  private final List<List<Bout>> bouts = new ArrayList<>();

  private final List<Boolean> grown = new ArrayList<>();
  private int[] drains = new int[0];

  private StretchedStep(Step step, Placement.Moments at, BusyHands busy, int limit) {
    this.step = step;
    this.at = at;
    this.busy = busy;
    this.limit = limit;
  }

  static StretchedStep of(RunState state, int index, BusyHands busy, Instant ifReady) {
    boolean open = state.steps().get(index).drain().isEmpty();
    boolean may = open && !state.plan().step(index).kind().developing();
    long limit = may ? state.canStillAdd(index).toSeconds() : 0;
    return new StretchedStep(
        state.plan().step(index),
        Placement.of(state, ifReady).steps().get(index),
        busy,
        (int) Math.min(limit, FreeHands.MOST.toSeconds()));
  }

  /** The most seconds by which it may be lengthened. */
  int limit() {
    return limit;
  }

  /** Works out what does not depend on the way, for an end up to so many seconds later. */
  void prepare(int most) {
    drains = new int[most + 1];
    for (int later = 0; later <= most; later++) {
      drains[later] = step.kind().wet() ? hit(at.drain(), at.end(), later) : 0;
    }
    for (int longer = bouts.size(); longer <= Math.min(limit, most); longer++) {
      List<Bout> these = boutsAfter(Duration.ofSeconds(longer));
      List<Bout> before = longer == 0 ? List.of() : bouts.get(longer - 1);
      grown.add(these.size() >= before.size() && these.subList(0, before.size()).equals(before));
      bouts.add(these);
    }
  }

  private List<Bout> boutsAfter(Duration longer) {
    Duration untilDrain = Duration.between(at.full(), at.drain()).plus(longer);
    return step.kind().wet() ? Attention.bouts(step, untilDrain) : List.of();
  }

  private int hit(Instant from, Instant to, int later) {
    long start = from.toEpochMilli() + later * SECOND;
    return busy.clashes(start, Math.max(start, to.toEpochMilli() + later * SECOND));
  }

  /** The step when it begins so many seconds late. */
  Walk begunLate(int late) {
    return new Walk(late);
  }

  /** Goes through its lengthenings second by second, counting only what is new. */
  final class Walk {
    private final int late;
    private final int poured;
    private int moved;

    private Walk(int late) {
      this.late = late;
      this.poured = hit(at.begin(), step.kind().wet() ? at.full() : at.end(), late);
    }

    /** Clashes when lengthened by so many seconds; to be asked for 0, 1, 2 … in turn. */
    int clashes(int longer) {
      List<Bout> now = bouts.get(longer);
      boolean goesOn = longer > 0 && grown.get(longer);
      int from = goesOn ? bouts.get(longer - 1).size() : 0;
      moved = goesOn ? moved : 0;
      for (Bout bout : now.subList(from, now.size())) {
        Instant begin = at.full().plus(bout.inStep());
        moved += hit(begin, begin.plus(bout.length()), late);
      }
      return poured + moved + drains[late + longer];
    }
  }
}
