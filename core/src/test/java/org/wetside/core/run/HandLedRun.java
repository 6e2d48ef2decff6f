package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.Light;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.SomeSteps;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.source.Standing;

/**
 * A run led by hand in a test: time passes, the plan is written when it is due as the conductor
 * does, screens send. Developer 9:00, stop bath 0:30, fixer 5:00, wash 5:00; pours 10 s, drains 15
 * s.
 */
final class HandLedRun {
  static final Instant START = Instant.parse("2026-01-14T19:00:00Z");
  static final int DEVELOPER = 0;
  static final int STOP = 1;
  static final int FIXER = 2;
  static final int WASH = 3;

  private RunState state;
  private Instant now = START;
  private int sent;

  HandLedRun() {
    this(Optional.empty());
  }

  HandLedRun(Optional<DoseBasis> dose) {
    state = RunState.ready(new RunPlan(steps(), List.of("lid-locked"), dose));
  }

  RunState state() {
    return state;
  }

  Instant now() {
    return now;
  }

  Placement moments() {
    return Placement.of(state, now);
  }

  List<Cue> cues() {
    return CueSheet.along(moments().offsets(state.plan()), "");
  }

  /** The first pour begins, with everything ticked. */
  static HandLedRun begun() {
    return begun(Optional.empty());
  }

  static HandLedRun begun(Optional<DoseBasis> dose) {
    HandLedRun run = new HandLedRun(dose);
    assertThat(run.send(DEVELOPER, new Happening.Started(List.of("lid-locked"), false)))
        .isEqualTo(new Outcome.Applied());
    return run;
  }

  /** Time goes on to so many seconds after the first pour. */
  HandLedRun at(double seconds) {
    return at(START.plusMillis(Math.round(seconds * 1000)));
  }

  /** Time goes on to a moment, and whatever of the plan is due by then is written. */
  HandLedRun at(Instant moment) {
    now = moment;
    Optional<Agenda.Due> due = Agenda.next(state);
    while (due.isPresent() && !due.get().at().isAfter(now)) {
      Agenda.Due next = due.get();
      RunEvent event = event("plan-" + state.sequence(), next.step(), next.what(), next.at());
      assertThat(Judge.of(state, event)).isEqualTo(new Outcome.Applied());
      state = state.after(event);
      due = Agenda.next(state);
    }
    return this;
  }

  /** What the laptop sends now by clicking, so that no key is known. */
  Outcome send(int step, Happening what) {
    return send("laptop", step, what);
  }

  Outcome send(String screen, int step, Happening what) {
    return take(sentNow(screen, step, what, ""));
  }

  Outcome press(String screen, String key, int step, Happening what) {
    return take(sentNow(screen, step, what, key));
  }

  /** The last event of the laptop is taken back. */
  Outcome undo() {
    return undo("laptop");
  }

  Outcome undo(String screen) {
    String last = UndoRules.lastOf(state, screen).map(RunEvent::id).orElse("nothing");
    return send(screen, Math.max(0, state.current()), new Happening.Undone(last));
  }

  /** Stored when it is applied or noted, as the conductor does. */
  Outcome take(RunEvent event) {
    Outcome outcome = Judge.of(state, event);
    if (outcome instanceof Outcome.Applied || outcome instanceof Outcome.Noted) {
      state = state.after(event);
      at(now);
    }
    return outcome;
  }

  /** Stored, with nothing written by the plan after it yet. */
  void storeOnly(RunEvent event) {
    state = state.after(event);
  }

  RunEvent sentNow(String screen, int step, Happening what, String key) {
    return sent(screen, step, what, key, now);
  }

  RunEvent sent(String screen, int step, Happening what, String key, Instant said) {
    sent++;
    RunEvent event = event("sent-" + sent, step, what, said);
    return new RunEvent(
        event.id(),
        event.sequence(),
        step,
        what,
        event.occurredAt(),
        event.receivedAt(),
        screen,
        key);
  }

  private RunEvent event(String id, int step, Happening what, Instant said) {
    return new RunEvent(
        id,
        state.sequence() + 1,
        step,
        what,
        Settled.moment(state, step, said, now),
        now,
        RunEvent.CONDUCTOR,
        "");
  }

  static Happening full() {
    return new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false);
  }

  static Happening pour() {
    return new Happening.StepBegun(Moment.POUR, Origin.PRESSED, false);
  }

  static Happening drain() {
    return new Happening.StepDrained(Origin.PRESSED, false);
  }

  static Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  private static List<Step> steps() {
    return List.of(
        step(StepKind.DEVELOPER, 540), step(StepKind.STOP_BATH, 30),
        step(StepKind.FIXER, 300), step(StepKind.WASH, 300));
  }

  private static Step step(StepKind kind, long seconds) {
    Duration time = Duration.ofSeconds(seconds);
    return new Step(
        kind,
        Optional.empty(),
        Optional.of(time),
        Step.POUR_IN,
        Step.DRAIN_LEAD,
        kind == StepKind.STOP_BATH ? AgitationSchedule.continuous() : SomeSteps.handbook(),
        Optional.empty(),
        AfterUse.discard(),
        Light.DARK,
        LongestTime.of(kind, time),
        Standing.COMMON_PRACTICE,
        "");
  }
}
