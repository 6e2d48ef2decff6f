package org.wetside.core.run;

import java.util.Optional;

/** Whether the film may wait in a bath for the person. */
final class WaitRules {
  private WaitRules() {}

  static Outcome begun(RunState state, RunEvent event) {
    int step = event.step();
    if (!state.plan().has(step)) {
      return Judge.noSuchStep(state, step);
    }
    Optional<Mark> drain = state.steps().get(step).drain();
    if (step < state.current() || drain.isPresent()) {
      return StepRules.done(drain);
    }
    if (step > state.current()) {
      return new Outcome.Refused("the " + word(state, step) + " has not begun");
    }
    if (state.plan().step(step).lengthenTo().isEmpty()) {
      return new Outcome.Refused("the " + word(state, step) + " does not wait: its time counts on");
    }
    return TimeRules.canStillAdd(state, step).isZero()
        ? new Outcome.Refused("the " + word(state, step) + " has already reached its longest time")
        : new Outcome.Applied();
  }

  static Outcome asked(RunState state, RunEvent event) {
    int step = event.step();
    if (!state.plan().has(step)) {
      return Judge.noSuchStep(state, step);
    }
    if (step <= state.current()) {
      return StepRules.done(state.steps().get(step).pour());
    }
    if (state.waitBefore().contains(step)) {
      return new Outcome.Noted("it will wait there already");
    }
    return state.mayWaitBefore(step)
        ? new Outcome.Applied()
        : new Outcome.Refused(
            step == 0
                ? "before the first pour nothing runs"
                : "the film cannot wait in the " + word(state, step - 1));
  }

  static Outcome withdrawn(RunState state, RunEvent event) {
    if (!state.plan().has(event.step())) {
      return Judge.noSuchStep(state, event.step());
    }
    boolean waitingHere = state.phase() == Phase.WAITING && event.step() == state.current() + 1;
    return waitingHere || state.waitBefore().contains(event.step())
        ? new Outcome.Applied()
        : new Outcome.Noted("it was not going to wait there");
  }

  private static String word(RunState state, int step) {
    return state.plan().step(step).kind().word();
  }
}
