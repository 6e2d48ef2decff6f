package org.wetside.core.hands;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.run.RunState;
import org.wetside.core.run.StepMarks;

/** A run as it would stand if some of its steps lasted longer. */
final class Lengthened {
  private Lengthened() {}

  static RunState state(RunState state, List<Lengthening> moves) {
    List<StepMarks> steps = new ArrayList<>(state.steps());
    for (Lengthening move : moves) {
      StepMarks marks = steps.get(move.step());
      Duration extra = marks.extra().plus(move.by());
      steps.set(
          move.step(),
          new StepMarks(marks.pour(), marks.full(), marks.drain(), extra, marks.dosed()));
    }
    return new RunState(
        state.plan(),
        state.phase(),
        state.current(),
        steps,
        state.waitBefore(),
        state.endedAt(),
        state.events(),
        state.notedBecause(),
        state.takenBack());
  }
}
