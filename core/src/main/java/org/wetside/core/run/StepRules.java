package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Whether a step may begin, drain, or the run start and finish. */
final class StepRules {
  /** A press that would end a developer more than this before its time asks once. */
  private static final Duration EARLY = Duration.ofSeconds(60);

  private StepRules() {}

  static Outcome started(RunState state, Happening.Started started) {
    List<String> missing =
        state.plan().checks().stream().filter(id -> !started.answers(id)).toList();
    return missing.isEmpty() || started.confirmed()
        ? new Outcome.Applied()
        : new Outcome.Asks("Not ticked: " + String.join(", ", missing) + ". Pour all the same?");
  }

  static Outcome begun(RunState state, RunEvent event, Happening.StepBegun begun) {
    int step = event.step();
    if (!state.plan().has(step)) {
      return Judge.noSuchStep(state, step);
    }
    if (step > state.current() + 1) {
      return notYet(state, step);
    }
    StepMarks marks = state.steps().get(step);
    if (step == state.current() + 1) {
      return tooEarly(state, event, begun.confirmed()).orElseGet(Outcome.Applied::new);
    }
    Optional<Mark> mark = begun.moment() == Moment.POUR ? marks.pour() : marks.full();
    if (step < state.current()) {
      return done(mark.or(marks::pour));
    }
    boolean settled = mark.filter(Mark::pressed).isPresent();
    if (settled || (begun.origin() == Origin.PLANNED && mark.isPresent())) {
      return done(mark);
    }
    Optional<Mark> drained = marks.drain().filter(Mark::pressed);
    if (drained.isPresent()) {
      return done(drained);
    }
    Optional<Mark> full = marks.full().filter(Mark::pressed);
    return begun.moment() == Moment.POUR && full.isPresent() ? done(full) : new Outcome.Applied();
  }

  static Outcome drained(RunState state, RunEvent event, Happening.StepDrained drained) {
    int step = event.step();
    if (!state.plan().has(step)) {
      return Judge.noSuchStep(state, step);
    }
    if (step > state.current()) {
      return notYet(state, step);
    }
    Optional<Mark> mark = state.steps().get(step).drain();
    boolean again = mark.filter(Mark::pressed).isPresent();
    if (step < state.current() || again || (drained.planned() && mark.isPresent())) {
      return done(mark);
    }
    return tooEarly(state, event, drained.confirmed()).orElseGet(Outcome.Applied::new);
  }

  static Outcome finished(RunState state) {
    int left = state.plan().steps().size() - 1 - state.current();
    return left == 0
        ? new Outcome.Applied()
        : new Outcome.Refused(
            "the run is "
                + state.phase().word()
                + ": "
                + (left == 1 ? "1 step is" : left + " steps are")
                + " still to come; give it up instead if it ends here");
  }

  private static Optional<Outcome> tooEarly(RunState state, RunEvent event, boolean confirmed) {
    int now = state.current();
    if (now < 0 || confirmed || !state.plan().step(now).kind().developing()) {
      return Optional.empty();
    }
    if (state.steps().get(now).drain().isPresent()) {
      return Optional.empty();
    }
    Instant due = Placement.of(state, Instant.EPOCH).steps().get(now).drain();
    Duration left = Duration.between(event.occurredAt(), due);
    return left.compareTo(EARLY) > 0
        ? Optional.of(
            new Outcome.Asks(
                "The "
                    + state.plan().step(now).kind().word()
                    + " has "
                    + Spoken.clock(left)
                    + " to go. End it now?"))
        : Optional.empty();
  }

  private static Outcome notYet(RunState state, int step) {
    return new Outcome.Refused(
        "the run is "
            + state.phase().word()
            + " in step "
            + state.current()
            + ": step "
            + step
            + " ("
            + state.plan().step(step).kind().word()
            + ") comes later");
  }

  /** The answer to a press for what is already past. */
  static Outcome done(Optional<Mark> mark) {
    return new Outcome.Noted(
        mark.map(
                at ->
                    "already done by "
                        + (at.pressed() ? at.by() : "the plan")
                        + " at "
                        + Spoken.moment(at.at()))
            .orElse("the step is already past"));
  }
}
