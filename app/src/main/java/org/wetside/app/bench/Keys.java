package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.wetside.core.process.StepKind;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/** What may be pressed in a run. At no moment is more than one next step open. */
final class Keys {
  /** A press that says "it is in" corrects the planned moment for so long after it. */
  private static final Duration STILL_MEANT = Duration.ofSeconds(30);

  private final RunState state;
  private final Placement moments;
  private final List<Key> keys = new ArrayList<>();

  private Keys(RunState state, Placement moments) {
    this.state = state;
    this.moments = moments;
  }

  static List<Key> of(RunState state, Placement moments, Instant now) {
    Keys keys = new Keys(state, moments);
    if (state.phase() == Phase.READY) {
      keys.next("First pour", Optional.empty(), Optional.empty(), EventKind.STARTED, -1, null);
      keys.always(Key.Role.ABANDON, "Give up", EventKind.ABANDONED, false);
    } else if (!state.phase().over()) {
      keys.nextSteps(now);
      keys.changes();
      keys.always(Key.Role.READING, "Reading", EventKind.READING_TAKEN, true);
      keys.always(Key.Role.MISHAP, "Mishap", EventKind.MISHAP, true);
      keys.always(Key.Role.ABANDON, "Give up", EventKind.ABANDONED, false);
    }
    keys.always(Key.Role.NOTE, "Note", EventKind.NOTE, true);
    return keys.keys;
  }

  private void nextSteps(Instant now) {
    int current = state.current();
    int last = state.plan().steps().size() - 1;
    if (state.phase() == Phase.WAITING) {
      next(
          heading(current + 1),
          Optional.of(now),
          Optional.empty(),
          EventKind.STEP_BEGUN,
          current + 1,
          Moment.POUR);
      return;
    }
    boolean confirmed =
        state.steps().get(current).full().filter(mark -> mark.pressed()).isPresent();
    if (!confirmed && state.steps().get(current).drain().isEmpty()) {
      isIn(current, moments.steps().get(current).begin());
    }
    if (current < last) {
      isIn(current + 1, moments.steps().get(current).drain());
    } else {
      keys.add(
          new Key(
              Key.Role.FINISH,
              "It hangs",
              Optional.of(moments.steps().get(last).drain()),
              Optional.empty(),
              EventKind.FINISHED,
              OptionalInt.empty(),
              Optional.empty(),
              Optional.empty()));
    }
  }

  /** "The bath is in": open from its pour until a little after the tank should be full. */
  private void isIn(int step, Instant from) {
    Placement.Moments its = moments.steps().get(step);
    Instant closes = its.full().plus(STILL_MEANT);
    Instant until = closes.isAfter(its.drain()) ? its.drain() : closes;
    boolean light = state.plan().step(step).kind() == StepKind.RE_EXPOSURE;
    next(
        heading(step) + (light ? " begins" : " is in"),
        Optional.of(from),
        Optional.of(until),
        EventKind.STEP_BEGUN,
        step,
        Moment.FULL);
  }

  private void changes() {
    int current = state.current();
    int after = current + 1;
    if (state.waitBefore().contains(after)
        || (state.phase() == Phase.WAITING && state.plan().has(after))) {
      one(Key.Role.WAIT, "Go on by the plan", EventKind.WAIT_WITHDRAWN, after, Optional.empty());
    } else if (state.mayWaitBefore(after) && state.steps().get(current).drain().isEmpty()) {
      one(
          Key.Role.WAIT,
          "Wait for me before the " + state.plan().step(after).kind().word(),
          EventKind.WAIT_ASKED,
          after,
          Optional.empty());
    }
    if (state.steps().get(current).drain().isPresent()) {
      return;
    }
    Duration most = state.canStillAdd(current);
    if (!most.isZero()) {
      one(Key.Role.LENGTHEN, "Longer", EventKind.LENGTHENED, current, Optional.of(most));
    }
    one(Key.Role.CUT, "Shorter", EventKind.CUT_SHORT, current, Optional.empty());
  }

  private void next(
      String label,
      Optional<Instant> from,
      Optional<Instant> until,
      EventKind kind,
      int step,
      @Nullable Moment moment) {
    keys.add(
        new Key(
            Key.Role.NEXT,
            label,
            from,
            until,
            kind,
            step < 0 ? OptionalInt.empty() : OptionalInt.of(step),
            Optional.ofNullable(moment),
            Optional.empty()));
  }

  private void one(
      Key.Role role, String label, EventKind kind, int step, Optional<Duration> limit) {
    keys.add(
        new Key(
            role,
            label,
            Optional.empty(),
            Optional.empty(),
            kind,
            OptionalInt.of(step),
            Optional.empty(),
            limit));
  }

  private void always(Key.Role role, String label, EventKind kind, boolean ofStep) {
    keys.add(
        Key.always(
            role,
            label,
            kind,
            ofStep ? OptionalInt.of(Math.max(0, state.current())) : OptionalInt.empty()));
  }

  private String heading(int step) {
    return state.plan().step(step).kind().heading();
  }
}
