package org.wetside.core.run;

import java.time.Instant;
import java.util.Optional;

/** What the conductor has to write next if nobody presses anything, and when. */
public final class Agenda {
  private Agenda() {}

  /**
   * A moment of the plan.
   *
   * @param at when it is due
   * @param step the step it refers to
   * @param what what is written
   */
  public record Due(Instant at, int step, Happening what) {}

  /** The next moment; empty when the run is not going on. */
  public static Optional<Due> next(RunState state) {
    if (state.phase() != Phase.RUNNING && state.phase() != Phase.WAITING) {
      return Optional.empty();
    }
    int now = state.current();
    StepMarks marks = state.steps().get(now);
    Placement.Moments moments = Placement.of(state, Instant.EPOCH).steps().get(now);
    if (marks.full().isEmpty()) {
      return due(moments.full(), now, new Happening.StepBegun(Moment.FULL, Origin.PLANNED, true));
    }
    if (marks.drain().isEmpty()) {
      boolean waits = state.phase() == Phase.RUNNING && waitsAfter(state, now);
      return due(
          moments.drain(),
          now,
          waits
              ? new Happening.WaitingBegun(Origin.PLANNED)
              : new Happening.StepDrained(Origin.PLANNED, true));
    }
    if (state.plan().has(now + 1)) {
      return due(
          moments.end(), now + 1, new Happening.StepBegun(Moment.POUR, Origin.PLANNED, true));
    }
    // Whoever took the planned end back ends the run by hand: it is not written a second time.
    return endWasTakenBack(state)
        ? Optional.empty()
        : due(moments.end(), now, new Happening.Finished(Origin.PLANNED));
  }

  private static boolean endWasTakenBack(RunState state) {
    return state.events().stream()
        .anyMatch(
            event ->
                event.what() instanceof Happening.Finished end
                    && end.planned()
                    && state.takenBack().contains(event.id()));
  }

  private static boolean waitsAfter(RunState state, int step) {
    return state.waitBefore().contains(step + 1)
        && state
            .plan()
            .step(step)
            .lengthenTo()
            .filter(limit -> limit.compareTo(Placement.lasts(state, step)) > 0)
            .isPresent();
  }

  private static Optional<Due> due(Instant at, int step, Happening what) {
    return Optional.of(new Due(at, step, what));
  }
}
