package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Where a run stands: a fold over its events, nothing else. Equal events give equal states.
 *
 * @param plan what was planned
 * @param phase ready, running, waiting, finished, abandoned
 * @param current index of the step whose pour began last; -1 before the first
 * @param steps what is recorded of each step
 * @param waitBefore steps before which "wait for me" is set
 * @param endedAt when it was finished or abandoned
 * @param events everything stored, in order
 * @param notedBecause for the id of each event that moved nothing: why
 * @param takenBack ids of events that were undone, or rested on one that was
 */
public record RunState(
    RunPlan plan,
    Phase phase,
    int current,
    List<StepMarks> steps,
    SortedSet<Integer> waitBefore,
    Optional<Instant> endedAt,
    List<RunEvent> events,
    Map<String, String> notedBecause,
    Set<String> takenBack) {
  public RunState {
    steps = List.copyOf(steps);
    waitBefore = Collections.unmodifiableSortedSet(new TreeSet<>(waitBefore));
    events = List.copyOf(events);
    notedBecause = Collections.unmodifiableMap(new LinkedHashMap<>(notedBecause));
    takenBack = Collections.unmodifiableSet(new LinkedHashSet<>(takenBack));
  }

  /** Before anything happened. */
  public static RunState ready(RunPlan plan) {
    return readyWithout(plan, Set.of());
  }

  /** The same for a fold that leaves out the events of these ids. */
  static RunState readyWithout(RunPlan plan, Set<String> takenBack) {
    return new RunState(
        plan,
        Phase.READY,
        -1,
        Collections.nCopies(plan.steps().size(), StepMarks.NONE),
        new TreeSet<>(),
        Optional.empty(),
        List.of(),
        Map.of(),
        takenBack);
  }

  /** The fold over stored events, in the order of their sequence numbers. */
  public static RunState replay(RunPlan plan, List<RunEvent> events) {
    RunState state = ready(plan);
    for (RunEvent event : events) {
      state = state.after(event);
    }
    return state;
  }

  /**
   * The state after one more stored event. One that is not applied ({@link Judge}) is kept and
   * moves nothing.
   *
   * @throws IllegalArgumentException when its sequence number is not the next
   */
  public RunState after(RunEvent event) {
    if (event.sequence() != sequence() + 1) {
      throw new IllegalArgumentException(
          "event " + event.sequence() + " cannot follow event " + sequence());
    }
    Outcome outcome = Judge.of(this, event);
    if (outcome instanceof Outcome.Applied) {
      return Effect.of(this, event);
    }
    return with(event, outcome);
  }

  /** The same state with other checks to answer before the first pour. */
  public RunState asking(List<String> checks) {
    return new RunState(
        plan.withChecks(checks),
        phase,
        current,
        steps,
        waitBefore,
        endedAt,
        events,
        notedBecause,
        takenBack);
  }

  /** Number of the last event; 0 before the first. */
  public long sequence() {
    return events.size();
  }

  /** When the first pour began. */
  public Optional<Instant> startedAt() {
    return steps.get(0).pour().map(Mark::at);
  }

  /** Events that still count: neither noted nor taken back. */
  public List<RunEvent> applied() {
    return events.stream()
        .filter(event -> !notedBecause.containsKey(event.id()) && !takenBack.contains(event.id()))
        .toList();
  }

  /** The stored event of that id. */
  public Optional<RunEvent> event(String id) {
    return events.stream().filter(event -> event.id().equals(id)).findFirst();
  }

  /** The mark "interrupted": the server was away during the run. */
  public boolean interrupted() {
    return events.stream().anyMatch(event -> event.kind() == EventKind.GAP);
  }

  /** Whether the film may stay in the step before this one until the person comes. */
  public boolean mayWaitBefore(int index) {
    return index > 0 && plan.has(index) && plan.step(index - 1).lengthenTo().isPresent();
  }

  /** How much longer a step may still be made; zero when not at all. */
  public Duration canStillAdd(int index) {
    return TimeRules.canStillAdd(this, index);
  }

  /**
   * The latest stored moment that concerns a step. Gaps, missed cues and what the conductor notes
   * do not count: they say who was absent, not what happened in the tank.
   */
  public Optional<Instant> lastMomentOf(int step) {
    return events.stream()
        .filter(event -> event.step() == step)
        .filter(event -> !aboutAbsence(event))
        .map(RunEvent::occurredAt)
        .max(Instant::compareTo);
  }

  private static boolean aboutAbsence(RunEvent event) {
    boolean noted = event.kind() == EventKind.NOTE && event.screen().equals(RunEvent.CONDUCTOR);
    return noted || event.kind() == EventKind.GAP || event.kind() == EventKind.CUE_MISSED;
  }

  RunState with(RunEvent event, Outcome notApplied) {
    Map<String, String> noted = new LinkedHashMap<>(notedBecause);
    noted.put(
        event.id(),
        notApplied instanceof Outcome.Noted why
            ? why.reason()
            : notApplied instanceof Outcome.Refused no ? no.reason() : "not confirmed");
    return new RunState(
        plan, phase, current, steps, waitBefore, endedAt, appended(event), noted, takenBack);
  }

  List<RunEvent> appended(RunEvent event) {
    List<RunEvent> longer = new ArrayList<>(events);
    longer.add(event);
    return longer;
  }
}
