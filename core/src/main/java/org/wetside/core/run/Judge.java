package org.wetside.core.run;

import java.time.Duration;

/**
 * What becomes of one more event: first the table of phases, then the rules of its kind. Says
 * nothing about disks or screens.
 */
public final class Judge {
  /** A second press of one key within this time is one press. */
  public static final Duration DOUBLE_PRESS = Duration.ofMillis(700);

  private Judge() {}

  /** The outcome the event would have in this state. */
  public static Outcome of(RunState state, RunEvent event) {
    if (!Transitions.allows(state.phase(), event.kind())) {
      return new Outcome.Refused(
          "the run is "
              + state.phase().word()
              + ": \""
              + event.kind().word()
              + "\" is not possible");
    }
    if (pressedTwice(state, event)) {
      return new Outcome.Noted("the key was pressed twice within 0.7 s");
    }
    return byKind(state, event);
  }

  private static Outcome byKind(RunState state, RunEvent event) {
    Happening what = event.what();
    if (what instanceof Happening.Started started) {
      return StepRules.started(state, started);
    }
    if (what instanceof Happening.StepBegun begun) {
      return StepRules.begun(state, event, begun);
    }
    if (what instanceof Happening.StepDrained drained) {
      return StepRules.drained(state, event, drained);
    }
    if (what instanceof Happening.Lengthened longer) {
      return TimeRules.lengthened(state, event, longer);
    }
    if (what instanceof Happening.CutShort shorter) {
      return TimeRules.cutShort(state, event, shorter);
    }
    if (what instanceof Happening.WaitingBegun) {
      return WaitRules.begun(state, event);
    }
    if (what instanceof Happening.WaitAsked) {
      return WaitRules.asked(state, event);
    }
    if (what instanceof Happening.WaitWithdrawn) {
      return WaitRules.withdrawn(state, event);
    }
    if (what instanceof Happening.ReadingTaken reading) {
      return ReadingRules.taken(state, event, reading);
    }
    if (what instanceof Happening.CueMissed missed) {
      return missed(state, missed);
    }
    if (what instanceof Happening.Mishap mishap) {
      return TimeRules.mishap(state, event, mishap);
    }
    if (what instanceof Happening.Note note) {
      return worded(note.text(), "a note needs words");
    }
    if (what instanceof Happening.Undone undone) {
      return UndoRules.undone(state, event, undone);
    }
    if (what instanceof Happening.Finished) {
      return StepRules.finished(state);
    }
    if (what instanceof Happening.Abandoned abandoned) {
      return worded(abandoned.reason(), "say why the run is abandoned");
    }
    return new Outcome.Applied();
  }

  private static boolean pressedTwice(RunState state, RunEvent event) {
    if (event.what().planned() || event.screen().equals(RunEvent.CONDUCTOR)) {
      return false;
    }
    for (int i = state.events().size() - 1; i >= 0; i--) {
      RunEvent earlier = state.events().get(i);
      if (!earlier.screen().equals(event.screen())) {
        continue;
      }
      boolean sameKey =
          (earlier.key().isEmpty() || event.key().isEmpty())
              ? (earlier.what().equals(event.what()) && earlier.step() == event.step())
              : earlier.key().equals(event.key());
      Duration apart = Duration.between(earlier.occurredAt(), event.occurredAt());
      return sameKey && !apart.isNegative() && apart.compareTo(DOUBLE_PRESS) < 0;
    }
    return false;
  }

  /** A cue is missed once, however many say so. */
  private static Outcome missed(RunState state, Happening.CueMissed missed) {
    return state.applied().stream().anyMatch(event -> event.what().equals(missed))
        ? new Outcome.Noted("it is known that this cue was missed")
        : new Outcome.Applied();
  }

  private static Outcome worded(String text, String otherwise) {
    return text.isBlank() ? new Outcome.Refused(otherwise) : new Outcome.Applied();
  }

  /** The step of an event as a refusal names it, when there is no such step. */
  static Outcome.Refused noSuchStep(RunState state, int step) {
    return new Outcome.Refused(
        "step " + step + " does not exist: they go from 0 to " + (state.plan().steps().size() - 1));
  }
}
