package org.wetside.core.hands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Step;
import org.wetside.core.run.Agenda;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Judge;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunPlan;
import org.wetside.core.run.RunState;

/** A tank with its run, led by the plan; whoever holds two of them has two tanks. */
final class TankInTest {
  static final Instant EVENING = Instant.parse("2026-01-14T19:00:00Z");

  final String name;
  private RunState state;

  private TankInTest(String name, List<Step> steps) {
    this.name = name;
    this.state = RunState.ready(new RunPlan(steps, List.of()));
  }

  static TankInTest ready(String name, List<Step> steps) {
    return new TankInTest(name, steps);
  }

  /** First poured so many seconds after the evening began. */
  static TankInTest poured(String name, List<Step> steps, long seconds) {
    TankInTest tank = new TankInTest(name, steps);
    tank.write(0, new Happening.Started(List.of(), false), at(seconds), "laptop");
    return tank;
  }

  static Instant at(long seconds) {
    return EVENING.plusSeconds(seconds);
  }

  /** Everything of the plan that is due by then is written. */
  TankInTest until(long seconds) {
    for (Optional<Agenda.Due> due = Agenda.next(state);
        due.isPresent() && !due.get().at().isAfter(at(seconds));
        due = Agenda.next(state)) {
      write(due.get().step(), due.get().what(), due.get().at(), RunEvent.CONDUCTOR);
    }
    return this;
  }

  TankInTest write(int step, Happening what, Instant at, String screen) {
    String id = name + "-" + state.sequence();
    RunEvent event = new RunEvent(id, state.sequence() + 1, step, what, at, at, screen, "");
    assertThat(Judge.of(state, event)).isEqualTo(new Outcome.Applied());
    state = state.after(event);
    return this;
  }

  /** As the conductor writes it. */
  TankInTest lengthened(List<Lengthening> moves, Instant at) {
    for (Lengthening move : moves) {
      write(move.step(), new Happening.Lengthened(move.by(), "hands"), at, RunEvent.CONDUCTOR);
    }
    return this;
  }

  TankInTest longer(int step, long seconds, long now) {
    return lengthened(List.of(new Lengthening(step, Duration.ofSeconds(seconds))), at(now));
  }

  RunState state() {
    return state;
  }

  List<AttentionWindow> windows() {
    return Attention.of(name, state, EVENING);
  }
}
