package org.wetside.web.rolls;

import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/**
 * One line of what happened.
 *
 * @param at when
 * @param kind what kind of thing
 * @param bath the step it belongs to; empty when to none
 * @param screen the screen it came from, or the conductor
 * @param words more of it; may be empty
 * @param counted empty; else why it moved nothing, or that it was taken back
 */
public record EventView(
    String at, String kind, String bath, String screen, String words, String counted) {
  static EventView of(RunState state, RunEvent event) {
    String noted = state.notedBecause().get(event.id());
    return new EventView(
        event.occurredAt().toString(),
        event.kind().word(),
        bath(state, event),
        event.screen(),
        words(event.what()),
        noted != null
            ? "moved nothing: " + noted
            : state.takenBack().contains(event.id()) ? "taken back" : "");
  }

  static String bath(RunState state, RunEvent event) {
    return state.plan().has(event.step()) ? state.plan().step(event.step()).kind().word() : "";
  }

  private static String words(Happening what) {
    if (what instanceof Happening.Lengthened longer) {
      return "by " + longer.by().toSeconds() + " s, " + longer.reason();
    }
    if (what instanceof Happening.CutShort shorter) {
      return "by " + shorter.by().toSeconds() + " s, " + shorter.reason();
    }
    if (what instanceof Happening.ReadingTaken reading) {
      return reading.corrected().toString();
    }
    if (what instanceof Happening.Mishap mishap) {
      return mishap.what();
    }
    if (what instanceof Happening.Note note) {
      return note.text();
    }
    if (what instanceof Happening.CueMissed missed) {
      return missed.cue();
    }
    if (what instanceof Happening.Abandoned given) {
      return given.reason();
    }
    if (what instanceof Happening.StepBegun begun) {
      return begun.moment().word() + ", " + begun.origin().word();
    }
    return what.planned() ? "planned" : "";
  }
}
