package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.process.PlacedStep;
import org.wetside.core.process.Step;

/**
 * Every moment of a run as an instant: what happened, and what is expected of the rest.
 *
 * @param start the first pour
 * @param steps one entry per step
 */
public record Placement(Instant start, List<Moments> steps) {
  /**
   * The four moments of a step.
   *
   * @param begin the pour begins
   * @param full the tank is full
   * @param drain the drain begins
   * @param end the next pour begins
   */
  public record Moments(Instant begin, Instant full, Instant drain, Instant end) {}

  public Placement {
    steps = List.copyOf(steps);
  }

  /**
   * Places a run.
   *
   * @param ifReady the first pour to assume while the run is ready
   */
  public static Placement of(RunState state, Instant ifReady) {
    List<Moments> placed = new ArrayList<>();
    Instant start = state.startedAt().orElse(ifReady);
    Instant begin = start;
    for (int i = 0; i < state.steps().size(); i++) {
      Moments moments = place(state, i, begin);
      placed.add(moments);
      begin = moments.end();
    }
    return new Placement(start, placed);
  }

  /** As it was planned when the first pour began. */
  public static Placement planned(RunPlan plan, Instant start) {
    return of(RunState.ready(plan), start);
  }

  private static Moments place(RunState state, int index, Instant expectedBegin) {
    Step step = state.plan().step(index);
    StepMarks marks = state.steps().get(index);
    Instant begin = marks.pour().map(Mark::at).orElse(expectedBegin);
    Instant full = marks.full().map(Mark::at).orElse(begin.plus(step.pourIn()));
    Instant due = full.plus(lasts(state, index));
    Instant drain = marks.drain().map(Mark::at).orElse(later(full, due.minus(step.drainLead())));
    Instant end = marks.drain().isPresent() ? drain.plus(step.drainLead()) : later(drain, due);
    if (index + 1 < state.steps().size()) {
      end = state.steps().get(index + 1).pour().map(Mark::at).orElse(end);
    } else if (state.phase() == Phase.FINISHED) {
      end = later(drain, state.endedAt().orElse(end));
    }
    return new Moments(begin, full, drain, end);
  }

  /** How long the step lasts as things stand; while waiting in it, as long as it may. */
  static Duration lasts(RunState state, int index) {
    Step step = state.plan().step(index);
    Duration asChanged =
        step.duration().orElse(Duration.ZERO).plus(state.steps().get(index).extra());
    Duration lasts = state.steps().get(index).dosed().orElse(asChanged);
    boolean waitingHere = state.phase() == Phase.WAITING && index == state.current();
    return waitingHere ? step.lengthenTo().orElse(lasts) : lasts;
  }

  /** The same as offsets from the first pour, for the cues. */
  public List<PlacedStep> offsets(RunPlan plan) {
    List<PlacedStep> placed = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Moments moments = steps.get(i);
      placed.add(
          new PlacedStep(
              i,
              plan.step(i),
              Duration.between(start, moments.begin()),
              Duration.between(start, moments.full()),
              Duration.between(start, moments.drain()),
              Duration.between(start, moments.end())));
    }
    return placed;
  }

  /** The end of the last step. */
  public Instant end() {
    return steps.get(steps.size() - 1).end();
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
