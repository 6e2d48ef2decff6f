package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** What an event that is applied does to the state. Whether it is applied, {@link Judge} says. */
final class Effect {
  /** What a reading is reckoned from: after anything else the dose is as it was. */
  private static final Set<EventKind> MOVES_THE_DOSE =
      EnumSet.of(
          EventKind.STARTED,
          EventKind.STEP_BEGUN,
          EventKind.READING_TAKEN,
          EventKind.LENGTHENED,
          EventKind.CUT_SHORT,
          EventKind.MISHAP);

  private final RunState before;
  private final RunEvent event;
  private final List<StepMarks> steps;
  private final SortedSet<Integer> waitBefore;
  private Phase phase;
  private int current;
  private Optional<Instant> endedAt;

  private Effect(RunState before, RunEvent event) {
    this.before = before;
    this.event = event;
    steps = new ArrayList<>(before.steps());
    waitBefore = new TreeSet<>(before.waitBefore());
    phase = before.phase();
    current = before.current();
    endedAt = before.endedAt();
  }

  static RunState of(RunState before, RunEvent event) {
    if (event.what() instanceof Happening.Undone undone) {
      return takeBack(before, event, undone.eventId());
    }
    Effect effect = new Effect(before, event);
    effect.apply();
    return dosed(
        new RunState(
            before.plan(),
            effect.phase,
            effect.current,
            effect.steps,
            effect.waitBefore,
            effect.endedAt,
            before.appended(event),
            before.notedBecause(),
            before.takenBack()));
  }

  /** The same with every developer that is still to be drained lasting as long as its dose asks. */
  private static RunState dosed(RunState state) {
    boolean moves = MOVES_THE_DOSE.contains(state.events().get(state.events().size() - 1).kind());
    if (state.plan().dose().isEmpty() || state.phase().over() || !moves) {
      return state;
    }
    List<StepMarks> steps = new ArrayList<>(state.steps());
    for (int i = Math.max(0, state.current()); i < steps.size(); i++) {
      if (steps.get(i).drain().isEmpty()) {
        steps.set(i, steps.get(i).withDosed(RunDose.lasts(state, i, List.of())));
      }
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

  private void apply() {
    Happening what = event.what();
    if (what instanceof Happening.Started) {
      phase = Phase.RUNNING;
      current = 0;
      change(0, StepMarks.NONE.withPour(Mark.of(event)));
    } else if (what instanceof Happening.StepBegun begun) {
      begin(begun.moment());
    } else if (what instanceof Happening.StepDrained) {
      drain();
    } else if (what instanceof Happening.Lengthened longer) {
      addExtra(longer.by());
    } else if (what instanceof Happening.CutShort shorter) {
      addExtra(shorter.by().negated());
    } else if (what instanceof Happening.WaitingBegun) {
      phase = Phase.WAITING;
    } else if (what instanceof Happening.WaitAsked) {
      waitBefore.add(event.step());
    } else if (what instanceof Happening.WaitWithdrawn) {
      withdrawWait();
    } else if (what instanceof Happening.Mishap mishap) {
      mishap.newTime().ifPresent(this::setTime);
    } else if (what instanceof Happening.Finished) {
      finish();
    } else if (what instanceof Happening.Abandoned) {
      end(Phase.ABANDONED, event.occurredAt());
    }
    // Readings, notes, gaps and missed cues move nothing: they are read from the events.
  }

  private void begin(Moment moment) {
    int index = event.step();
    Mark mark = Mark.of(event);
    if (index == current) {
      StepMarks marks = steps.get(index);
      if (moment == Moment.POUR) {
        marks = marks.withPour(mark).withoutPlannedAfterPour();
      } else {
        marks = pourNotAfter(marks.withFull(mark).withoutPlannedDrain(), event.occurredAt());
      }
      change(index, marks);
      return;
    }
    Duration pourIn = before.plan().step(index).pourIn();
    // A slow screen, or two presses in a breath, must not put this pour before the last one.
    Instant earliest = steps.get(current).pour().map(Mark::at).orElse(event.occurredAt());
    Instant said = later(event.occurredAt(), earliest);
    Instant poured = later(moment == Moment.POUR ? said : said.minus(pourIn), earliest);
    Instant left = leavePrevious(poured);
    mark = new Mark(later(said, left), mark.how(), mark.by());
    StepMarks marks = StepMarks.NONE.withExtra(steps.get(index).extra());
    marks =
        moment == Moment.POUR
            ? marks.withPour(mark)
            : marks.withPour(Mark.inferred(later(left, poured), event)).withFull(mark);
    change(index, marks);
    current = index;
    phase = Phase.RUNNING;
    waitBefore.remove(index);
  }

  /**
   * The bath before is over by the next pour (or by hanging the film), whatever the plan wrote for
   * later; returns the earliest moment that can have.
   */
  private Instant leavePrevious(Instant nextPour) {
    StepMarks marks = steps.get(current);
    Placement.Moments expected = Placement.of(before, Instant.EPOCH).steps().get(current);
    if (marks.full().isEmpty() || plannedAfter(marks.full(), nextPour)) {
      Instant full = earlier(expected.full(), nextPour);
      marks = marks.withFull(Mark.inferred(full, event));
    }
    if (marks.drain().isEmpty() || plannedAfter(marks.drain(), nextPour)) {
      Instant full = marks.full().map(Mark::at).orElse(nextPour);
      Instant drain = nextPour.minus(before.plan().step(current).drainLead());
      marks = marks.withDrain(Mark.inferred(later(drain, full), event));
    }
    change(current, marks);
    return marks.drain().map(Mark::at).orElse(nextPour);
  }

  private static boolean plannedAfter(Optional<Mark> mark, Instant moment) {
    return mark.filter(one -> !one.pressed() && one.at().isAfter(moment)).isPresent();
  }

  private void drain() {
    StepMarks marks = steps.get(current);
    if (marks.full().isEmpty()) {
      Instant expected = Placement.of(before, Instant.EPOCH).steps().get(current).full();
      marks = marks.withFull(Mark.inferred(earlier(expected, event.occurredAt()), event));
    }
    change(current, marks.withDrain(Mark.of(event)));
    phase = Phase.RUNNING;
  }

  private void withdrawWait() {
    waitBefore.remove(event.step());
    if (phase == Phase.WAITING && event.step() == current + 1) {
      // The time waited becomes part of the step: its drain is due now.
      Instant full = Placement.of(before, Instant.EPOCH).steps().get(current).full();
      Duration lead = before.plan().step(current).drainLead();
      setTime(Duration.between(full, event.occurredAt()).plus(lead), current);
      phase = Phase.RUNNING;
    }
  }

  private void finish() {
    Instant poured = steps.get(current).pour().map(Mark::at).orElse(event.occurredAt());
    Instant said = later(event.occurredAt(), poured);
    end(Phase.FINISHED, later(said, leavePrevious(said)));
  }

  private void end(Phase last, Instant at) {
    phase = last;
    endedAt = Optional.of(at);
    waitBefore.clear();
  }

  private void addExtra(Duration by) {
    StepMarks marks = steps.get(event.step());
    change(event.step(), marks.withExtra(marks.extra().plus(by)));
  }

  private void setTime(Duration time) {
    setTime(time, event.step());
  }

  private void setTime(Duration time, int index) {
    Duration planned = before.plan().step(index).duration().orElse(Duration.ZERO);
    change(index, steps.get(index).withExtra(time.minus(planned)));
  }

  private StepMarks pourNotAfter(StepMarks marks, Instant full) {
    return marks.pour().filter(pour -> !pour.at().isAfter(full)).isPresent()
        ? marks
        : marks.withPour(Mark.inferred(full, event));
  }

  private void change(int index, StepMarks marks) {
    steps.set(index, marks);
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }

  /**
   * Without the event taken back, and without what the conductor wrote since because of it: it will
   * write again what is due in the state that remains. What was only noted stays noted: a second
   * press must not do what the first one was taken back for. What was applied is not asked about
   * again: its question was answered when it happened.
   */
  private static RunState takeBack(RunState before, RunEvent undo, String target) {
    long since = before.event(target).map(RunEvent::sequence).orElse(Long.MAX_VALUE);
    Set<String> gone = new LinkedHashSet<>(before.takenBack());
    gone.add(target);
    for (RunEvent event : before.events()) {
      if (event.sequence() > since && event.what().planned()) {
        gone.add(event.id());
      }
    }
    RunState state = RunState.readyWithout(before.plan(), gone);
    for (RunEvent event : before.events()) {
      state = again(before, state, event);
    }
    return kept(state, undo);
  }

  /** One event of a run from which something was taken back. */
  private static RunState again(RunState before, RunState state, RunEvent event) {
    String noted = before.notedBecause().get(event.id());
    if (noted != null) {
      return state.with(event, new Outcome.Noted(noted));
    }
    if (state.takenBack().contains(event.id()) || event.what() instanceof Happening.Undone) {
      return kept(state, event);
    }
    Outcome outcome = Judge.of(state, event);
    boolean holds = outcome instanceof Outcome.Applied || outcome instanceof Outcome.Asks;
    return holds ? of(state, event) : state.with(event, outcome);
  }

  private static RunState kept(RunState state, RunEvent event) {
    return new RunState(
        state.plan(),
        state.phase(),
        state.current(),
        state.steps(),
        state.waitBefore(),
        state.endedAt(),
        state.appended(event),
        state.notedBecause(),
        state.takenBack());
  }
}
