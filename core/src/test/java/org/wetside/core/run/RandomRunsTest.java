package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.Light;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.source.Standing;

/** Random hands and screens; after every event what must always hold is looked at. */
class RandomRunsTest {
  private static final Instant START = Instant.parse("2026-01-14T19:00:00Z");
  private static final int RUNS = 60;
  private static final int EVENTS = 80;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void whatMustHoldHoldsAfterEveryEvent(long seed) {
    Random random = new Random(seed);
    int applied = 0;
    for (int run = 0; run < RUNS; run++) {
      applied += oneRun(random);
    }
    assertThat(applied).isGreaterThan(RUNS * 10);
  }

  private static int oneRun(Random random) {
    RunPlan plan = new RunPlan(steps(), List.of());
    RunState state = RunState.ready(plan);
    Instant now = START;
    int applied = 0;
    for (int i = 0; i < EVENTS; i++) {
      now = now.plusMillis(random.nextInt(60_000));
      state = planUpTo(state, now);
      RunEvent event = event(state, random, now, i);
      Outcome outcome = Judge.of(state, event);
      RunState before = state;
      if (outcome instanceof Outcome.Applied || outcome instanceof Outcome.Noted) {
        state = state.after(event);
        applied += outcome instanceof Outcome.Applied ? 1 : 0;
      }
      mustHold(before, state, event, outcome);
    }
    return applied;
  }

  /** As the conductor does: everything of the plan that is due is written. */
  private static RunState planUpTo(RunState from, Instant now) {
    RunState state = from;
    Optional<Agenda.Due> due = Agenda.next(state);
    while (due.isPresent() && !due.get().at().isAfter(now)) {
      Agenda.Due next = due.get();
      RunEvent event =
          new RunEvent(
              "plan-" + state.sequence(),
              state.sequence() + 1,
              next.step(),
              next.what(),
              Settled.moment(state, next.step(), next.at(), now),
              now,
              RunEvent.CONDUCTOR,
              "");
      assertThat(Judge.of(state, event)).isEqualTo(new Outcome.Applied());
      state = state.after(event);
      due = Agenda.next(state);
    }
    return state;
  }

  private static void mustHold(RunState before, RunState after, RunEvent event, Outcome outcome) {
    assertThat(RunState.replay(after.plan(), after.events())).isEqualTo(after);
    for (int i = 0; i < after.events().size(); i++) {
      assertThat(after.events().get(i).sequence()).isEqualTo(i + 1L);
    }
    if (!Transitions.allows(before.phase(), event.kind())) {
      assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    }
    if (outcome instanceof Outcome.Noted) {
      assertThat(after.steps()).isEqualTo(before.steps());
      assertThat(after.phase()).isEqualTo(before.phase());
    }
    if (event.kind() != EventKind.UNDONE) {
      assertThat(after.current()).isGreaterThanOrEqualTo(before.current());
    }
    Placement moments = Placement.of(after, START);
    Instant last = Instant.MIN;
    for (int i = 0; i < moments.steps().size(); i++) {
      Placement.Moments at = moments.steps().get(i);
      assertThat(at.begin()).isAfterOrEqualTo(last);
      assertThat(at.end()).isAfterOrEqualTo(at.begin());
      last = at.begin();
      boolean developer = after.plan().step(i).kind().developing();
      if (developer) {
        assertThat(after.steps().get(i).extra()).isLessThanOrEqualTo(Duration.ZERO);
        assertThat(after.phase() == Phase.WAITING && after.current() == i).isFalse();
      }
    }
    Set<String> ids = new HashSet<>();
    for (Cue cue : CueSheet.along(moments.offsets(after.plan()), "")) {
      assertThat(ids.add(cue.id())).as("cue " + cue.id() + " once").isTrue();
    }
  }

  private static RunEvent event(RunState state, Random random, Instant now, int number) {
    int step = Math.max(0, Math.min(3, state.current() + random.nextInt(3) - 1));
    String screen = random.nextBoolean() ? "laptop" : "phone";
    return new RunEvent(
        "sent-" + number,
        state.sequence() + 1,
        step,
        happening(state, random, screen),
        Settled.moment(state, step, now.minusMillis(random.nextInt(2_000)), now),
        now,
        screen,
        "");
  }

  private static Happening happening(RunState state, Random random, String screen) {
    Temperature read = Temperature.ofCelsius(15 + random.nextInt(12));
    boolean yes = random.nextBoolean();
    return switch (random.nextInt(14)) {
      case 0, 1 -> new Happening.Started(List.of(), true);
      case 2, 3 -> new Happening.StepBegun(Moment.FULL, Origin.PRESSED, yes);
      case 4 -> new Happening.StepBegun(Moment.POUR, Origin.PRESSED, yes);
      case 5 -> new Happening.StepDrained(Origin.PRESSED, yes);
      case 6 -> new Happening.Lengthened(Duration.ofSeconds(1 + random.nextInt(200)), "slow");
      case 7 -> new Happening.CutShort(Duration.ofSeconds(1 + random.nextInt(60)), "", yes);
      case 8 -> new Happening.WaitAsked();
      case 9 -> new Happening.WaitWithdrawn();
      case 10 -> new Happening.ReadingTaken("2", read, read, yes);
      case 11 -> new Happening.Note("words");
      case 12 -> new Happening.Mishap("not agitated", "", Optional.empty());
      default ->
          new Happening.Undone(UndoRules.lastOf(state, screen).map(RunEvent::id).orElse("nothing"));
    };
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
        AgitationSchedule.continuous(),
        Optional.empty(),
        AfterUse.discard(),
        Light.DARK,
        LongestTime.of(kind, time),
        Standing.COMMON_PRACTICE,
        "");
  }
}
