package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.hands.Attention;
import org.wetside.core.hands.Clash;
import org.wetside.core.hands.StartAdvice;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/** Two runs at the Bench, on a real database: what gives way to what. */
class TwoTanksTest {
  @TempDir Path home;

  @Test
  void aRunBegunWhenAdvisedNeverWantsTheHandsWithTheOther() {
    try (Evening evening = new Evening(home.resolve("advised.db"))) {
      long one = evening.started();
      evening.clock.pass(Duration.ofSeconds(100));
      long two = evening.second();
      StartAdvice advice = evening.bench.startAdvice(two).orElseThrow();
      evening.clock.pass(Duration.between(evening.clock.instant(), advice.from()));
      evening.send(two, 0, new Happening.Started(Evening.TICKS, false));
      assertThat(clashes(evening, one, two)).isEmpty();
      assertThat(evening.bench.look(two).clash()).isEmpty();
    }
  }

  @Test
  void whatMayLastLongerGivesWayAndTheRecordSaysWhy() {
    int moved = 0;
    for (int delay = 330; delay < 600; delay += 45) {
      try (Evening evening = new Evening(home.resolve("delay" + delay + ".db"))) {
        long one = evening.started();
        evening.clock.pass(Duration.ofSeconds(delay));
        long two = evening.second();
        evening.send(two, 0, new Happening.Started(Evening.TICKS, false));
        List<RunEvent> ways = ways(evening, one);
        ways.addAll(ways(evening, two));
        moved += ways.size();
        for (long run : List.of(one, two)) {
          RunState state = evening.bench.look(run).state();
          assertThat(state.steps().get(0).extra()).as("a developer").isEqualTo(Duration.ZERO);
          assertThat(RunState.replay(state.plan(), state.events())).isEqualTo(state);
        }
        List<Clash> left = clashes(evening, one, two);
        assertThat(evening.bench.look(one).clash().isPresent()).isEqualTo(!left.isEmpty());
      }
    }
    assertThat(moved).as("lengthenings in six evenings").isPositive();
  }

  @Test
  void eachRunKnowsTheTanksItMustBeToldApartFrom() {
    try (Evening evening = new Evening(home.resolve("names.db"))) {
      long one = evening.started();
      assertThat(evening.bench.look(one).otherTanks()).isEmpty();
      List<Long> told = new ArrayList<>();
      evening.bench.watch(told::add);
      long two = evening.second();
      assertThat(told).contains(one, two);
      assertThat(evening.bench.look(one).otherTanks()).containsExactly("Single");
      assertThat(evening.bench.look(two).otherTanks()).containsExactly("Double");
      evening.send(two, 0, new Happening.Abandoned("not tonight"));
      assertThat(evening.bench.look(one).otherTanks()).isEmpty();
    }
  }

  private static List<RunEvent> ways(Evening evening, long run) {
    List<RunEvent> ways = new ArrayList<>();
    for (RunEvent event : evening.bench.look(run).state().applied()) {
      if (event.what() instanceof Happening.Lengthened longer) {
        assertThat(event.screen()).isEqualTo(RunEvent.CONDUCTOR);
        assertThat(longer.reason()).startsWith("so that both hands are free for ");
        ways.add(event);
      }
    }
    return ways;
  }

  private static List<Clash> clashes(Evening evening, long one, long two) {
    BenchSnapshot first = evening.bench.look(one);
    BenchSnapshot second = evening.bench.look(two);
    return Clash.between(
        Attention.after(first.now(), Attention.of("Double", first.state(), first.now())),
        Attention.after(first.now(), Attention.of("Single", second.state(), first.now())));
  }
}
