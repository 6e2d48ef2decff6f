package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.wetside.core.process.Step;

/** Whether a step may last longer or shorter. */
final class TimeRules {
  private TimeRules() {}

  static Outcome lengthened(RunState state, RunEvent event, Happening.Lengthened longer) {
    Optional<Outcome> not = settled(state, event.step(), longer.by());
    if (not.isPresent()) {
      return not.get();
    }
    Step step = state.plan().step(event.step());
    if (step.kind().developing()) {
      return new Outcome.Refused("a " + step.kind().word() + " is never lengthened");
    }
    Duration most = canStillAdd(state, event.step());
    return longer.by().compareTo(most) <= 0
        ? new Outcome.Applied()
        : new Outcome.Refused(
            step.kind().word()
                + " by "
                + Spoken.clock(longer.by())
                + " is refused: at most "
                + Spoken.clock(most)
                + " can still be added");
  }

  /** How much longer a step may still be made; zero when not at all. */
  static Duration canStillAdd(RunState state, int index) {
    Step step = state.plan().step(index);
    Duration lasts = step.duration().orElse(Duration.ZERO).plus(state.steps().get(index).extra());
    Duration most = step.lengthenTo().map(limit -> limit.minus(lasts)).orElse(Duration.ZERO);
    return most.isNegative() ? Duration.ZERO : most;
  }

  static Outcome cutShort(RunState state, RunEvent event, Happening.CutShort shorter) {
    Optional<Outcome> not = settled(state, event.step(), shorter.by());
    if (not.isPresent()) {
      return not.get();
    }
    Step step = state.plan().step(event.step());
    Duration left = Placement.lasts(state, event.step()).minus(shorter.by());
    Optional<Outcome> impossible = tooShort(state, event, left);
    if (impossible.isPresent()) {
      return impossible.get();
    }
    return step.kind().developing() && !shorter.confirmed()
        ? new Outcome.Asks(
            "The "
                + step.kind().word()
                + " would last "
                + Spoken.clock(left)
                + ": thinner negatives. Cut it short?")
        : new Outcome.Applied();
  }

  static Outcome mishap(RunState state, RunEvent event, Happening.Mishap mishap) {
    if (mishap.what().isBlank()) {
      return new Outcome.Refused("say what happened");
    }
    if (!state.plan().has(event.step())) {
      return Judge.noSuchStep(state, event.step());
    }
    if (mishap.newTime().isEmpty()) {
      return new Outcome.Applied();
    }
    Duration time = mishap.newTime().get();
    if (!state.plan().step(event.step()).kind().developing()) {
      return new Outcome.Refused("a new time is for a developer");
    }
    return settled(state, event.step(), time)
        .or(() -> tooShort(state, event, time))
        .orElseGet(Outcome.Applied::new);
  }

  private static Optional<Outcome> settled(RunState state, int index, Duration by) {
    if (!state.plan().has(index)) {
      return Optional.of(Judge.noSuchStep(state, index));
    }
    if (by.isZero() || by.isNegative()) {
      return Optional.of(new Outcome.Refused("the time must be above 0 s"));
    }
    Optional<Mark> drain = state.steps().get(index).drain();
    return index < state.current() || drain.isPresent()
        ? Optional.of(StepRules.done(drain))
        : Optional.empty();
  }

  private static Optional<Outcome> tooShort(RunState state, RunEvent event, Duration time) {
    Duration least = state.plan().step(event.step()).drainLead();
    if (event.step() == state.current()) {
      Instant full = Placement.of(state, Instant.EPOCH).steps().get(event.step()).full();
      Duration passed = Duration.between(full, event.occurredAt());
      least = passed.isNegative() ? least : least.plus(passed);
    }
    return time.compareTo(least) < 0
        ? Optional.of(
            new Outcome.Refused(
                Spoken.clock(time)
                    + " is refused: at least "
                    + Spoken.clock(least)
                    + ", the drain included"))
        : Optional.empty();
  }
}
