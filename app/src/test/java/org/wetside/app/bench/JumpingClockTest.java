package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/** The machine's clock is set while the process lives: the counter wins, no deadline moves. */
class JumpingClockTest {
  @TempDir Path home;

  @Test
  void theWallIsLookedAtOnce() {
    HandClock wall = new HandClock(Evening.START);
    long[] nanos = {5_000_000_000L};
    Clock steady = new SteadyClock(wall, () -> nanos[0]);
    nanos[0] += 3_000_000_000L;
    wall.passUnwatched(Duration.ofHours(1));
    assertThat(steady.instant()).isEqualTo(Evening.START.plusSeconds(3));
    wall.passUnwatched(Duration.ofHours(-5));
    assertThat(steady.instant()).isEqualTo(Evening.START.plusSeconds(3));
    assertThat(steady.withZone(steady.getZone()).instant()).isEqualTo(steady.instant());
  }

  /** {@code passed} is the true time: it drives the counter and the alarm; the wall jumps. */
  @ParameterizedTest
  @ValueSource(longs = {3600, -3600, 7, -7})
  void noDeadlineMoves(long jump) {
    HandClock wall = new HandClock(Evening.START);
    HandClock passed = new HandClock(Evening.START);
    Clock steady =
        new SteadyClock(wall, () -> Duration.between(Evening.START, passed.instant()).toNanos());
    try (Evening evening = new Evening(home.resolve("wetside.db"), passed, steady)) {
      long run = evening.started();
      passed.pass(Duration.ofSeconds(100));
      Placement before = evening.bench.look(run).moments();

      wall.passUnwatched(Duration.ofSeconds(jump));

      BenchSnapshot after = evening.bench.look(run);
      assertThat(after.moments()).isEqualTo(before);
      assertThat(after.now()).isEqualTo(Evening.START.plusSeconds(100));
      passed.pass(Duration.ofSeconds(434));
      assertThat(evening.bench.look(run).state().steps().get(0).drain()).isEmpty();
      passed.pass(Duration.ofSeconds(1));
      assertThat(evening.bench.look(run).state().steps().get(0).drain().orElseThrow().at())
          .isEqualTo(Evening.START.plusSeconds(535));
      assertThat(kinds(evening.bench.look(run).state())).doesNotContain(EventKind.GAP);
      passed.pass(Duration.ofHours(1));
      assertThat(evening.bench.look(run).endsAt()).isEqualTo(before.end());
    }
  }

  @Test
  void whatIsPressedAfterTheJumpStandsWhereItHappened() {
    HandClock wall = new HandClock(Evening.START);
    HandClock passed = new HandClock(Evening.START);
    Clock steady =
        new SteadyClock(wall, () -> Duration.between(Evening.START, passed.instant()).toNanos());
    try (Evening evening = new Evening(home.resolve("wetside.db"), passed, steady)) {
      long run = evening.started();
      passed.pass(Duration.ofSeconds(8));
      wall.passUnwatched(Duration.ofHours(2));
      evening.send(run, 0, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false));
      Instant full = evening.bench.look(run).state().steps().get(0).full().orElseThrow().at();
      assertThat(full).isEqualTo(Evening.START.plusSeconds(8));
    }
  }

  private static List<EventKind> kinds(RunState state) {
    return state.events().stream().map(event -> event.kind()).toList();
  }
}
