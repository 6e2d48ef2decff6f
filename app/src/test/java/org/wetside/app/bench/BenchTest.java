package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunState;
import org.wetside.store.RollSearch;
import org.wetside.store.Runs;

class BenchTest {
  @TempDir Path home;

  private Evening evening() {
    return new Evening(home.resolve("wetside.db"));
  }

  @Test
  void leftAloneARunGoesThroughByItsPlan() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofSeconds(534));
      assertThat(evening.bench.look(run).state().steps().get(0).drain()).isEmpty();
      evening.clock.pass(Duration.ofSeconds(1));
      assertThat(evening.bench.look(run).state().steps().get(0).drain().orElseThrow().at())
          .isEqualTo(Evening.START.plusSeconds(535));
      evening.clock.pass(Duration.ofHours(1));
      BenchSnapshot over = evening.bench.look(run);
      assertThat(over.state().phase()).isEqualTo(Phase.FINISHED);
      assertThat(over.endsAt()).isEqualTo(over.planned().end());
    }
  }

  @Test
  void aRunThatIsOverHasNoCueToCome() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofSeconds(100));
      int all = evening.bench.look(run).cues().size();
      BenchSnapshot givenUp = evening.send(run, 0, new Happening.Abandoned("no fixer")).snapshot();
      assertThat(givenUp.state().phase()).isEqualTo(Phase.ABANDONED);
      assertThat(givenUp.cues()).isNotEmpty().hasSizeLessThan(all);
      assertThat(givenUp.cues())
          .allMatch(cue -> !givenUp.at(cue).isAfter(Evening.START.plusSeconds(100)));
      evening.clock.pass(Duration.ofHours(1));
      assertThat(evening.bench.look(run).cues()).isEqualTo(givenUp.cues());
    }
  }

  @Test
  void aRunThatWentThroughKeepsEveryCueToTheLast() {
    try (Evening evening = evening()) {
      long run = evening.started();
      int all = evening.bench.look(run).cues().size();
      evening.clock.pass(Duration.ofHours(1));
      BenchSnapshot over = evening.bench.look(run);
      assertThat(over.state().phase()).isEqualTo(Phase.FINISHED);
      assertThat(over.cues()).hasSize(all);
      assertThat(over.cues()).allMatch(cue -> !over.at(cue).isAfter(over.endsAt()));
    }
  }

  @Test
  void aRunGivenUpBeforeTheFirstPourHasNoCueAtAll() {
    try (Evening evening = evening()) {
      long run = evening.open().card().id();
      evening.clock.pass(Duration.ofSeconds(100));
      assertThat(evening.send(run, 0, new Happening.Abandoned("tired")).snapshot().cues())
          .isEmpty();
    }
  }

  @Test
  void theEndSettlesBottlesRollsAndWords() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofMinutes(3));
      evening.send(run, 0, new Happening.Note("the heater was off"));
      evening.clock.pass(Duration.ofHours(1));
      // 600 mL at 1+1 take 300 mL of stock, used once; the fixer loses 10 mL for each of two rolls.
      assertThat(evening.left("D")).isEqualTo(700);
      assertThat(evening.left("F")).isEqualTo(980);
      assertThat(evening.stateOf("A-1")).isEqualTo(RollState.PROCESSED);
      for (String word : List.of("heater", "soup", "bottle F", "2026", "Double")) {
        List<String> found =
            evening.database.<List<String>>read(session -> new RollSearch(session).find(word));
        assertThat(found).as(word).containsExactlyInAnyOrder("A-1", "A-2");
      }
    }
  }

  @Test
  void theEndTakenBackGivesEverythingBack() {
    try (Evening evening = evening()) {
      long run = evening.started();
      Instant hangs = evening.bench.look(run).moments().end();
      evening.clock.pass(Duration.between(evening.clock.instant(), hangs).plusSeconds(5));
      String end =
          evening.bench.look(run).state().events().stream()
              .filter(event -> event.kind() == EventKind.FINISHED)
              .findFirst()
              .orElseThrow()
              .id();
      Answer back = evening.send(run, 6, new Happening.Undone(end));
      assertThat(back.outcome()).isInstanceOf(Outcome.Applied.class);
      assertThat(back.snapshot().state().phase()).isNotEqualTo(Phase.FINISHED);
      assertThat(evening.left("D")).isEqualTo(1000);
      assertThat(evening.left("F")).isEqualTo(1000);
      assertThat(evening.stateOf("A-2")).isEqualTo(RollState.LOADED);
    }
  }

  @Test
  void aRepeatedIdIsAnsweredAsBeforeAndStoredOnce() {
    try (Evening evening = evening()) {
      long run = evening.open().card().id();
      SentEvent start =
          new SentEvent(
              "start-0001",
              java.util.Optional.empty(),
              new Happening.Started(List.of(), true),
              evening.clock.instant(),
              "phone",
              "Space");
      Answer first = evening.bench.take(run, start);
      Answer second = evening.bench.take(run, start);
      assertThat(second.outcome()).isEqualTo(first.outcome()).isEqualTo(new Outcome.Applied());
      assertThat(second.snapshot().state().sequence()).isEqualTo(1);
    }
  }

  @Test
  void twoScreensThatPressTheSameAreToldWhoWasFirst() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofSeconds(9));
      Happening full = new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false);
      assertThat(evening.send(run, 0, full, "laptop").outcome()).isEqualTo(new Outcome.Applied());
      Outcome second = evening.send(run, 0, full, "phone").outcome();
      assertThat(second).isInstanceOf(Outcome.Noted.class);
      assertThat(((Outcome.Noted) second).reason()).startsWith("already done by laptop at ");
    }
  }

  @Test
  void missingTicksAreAskedAboutOnce() {
    try (Evening evening = evening()) {
      long run = evening.open().card().id();
      Answer asked = evening.send(run, 0, new Happening.Started(List.of("tug"), false));
      assertThat(asked.outcome()).isInstanceOf(Outcome.Asks.class);
      assertThat(asked.snapshot().state().sequence()).isZero();
      assertThat(evening.send(run, 0, new Happening.Started(List.of("tug"), true)).outcome())
          .isEqualTo(new Outcome.Applied());
    }
  }

  @Test
  void aReadingIsStoredRawAndCorrected() {
    try (Evening evening = evening()) {
      long run = evening.started();
      Temperature raw = Temperature.ofCelsius(19.2);
      Answer kept = evening.send(run, 0, new Happening.ReadingTaken("2", raw, raw, false));
      assertThat(kept.outcome()).isEqualTo(new Outcome.Applied());
      Temperature hot = Temperature.ofCelsius(200);
      Answer refused = evening.send(run, 0, new Happening.ReadingTaken("2", hot, hot, true));
      assertThat(refused.outcome()).isInstanceOf(Outcome.Refused.class);
    }
  }

  @Test
  void aRestartGoesOnByTheClockAndSaysWhatWasMissed() {
    long run;
    Instant started;
    try (Evening before = evening()) {
      run = before.started();
      started = before.bench.look(run).moments().start();
      before.clock.pass(Duration.ofSeconds(100));
    }
    try (Evening after = evening()) {
      after.clock.passUnwatched(Duration.ofSeconds(190));
      after.bench.resume();
      assertThat(gapsAndMissed(after.bench.look(run).state()))
          .as("the screens are asked")
          .hasSize(1);
      after.clock.pass(Duration.ofSeconds(10));
      BenchSnapshot found = after.bench.look(run);
      assertThat(found.moments().start()).isEqualTo(started);
      assertThat(found.state().interrupted()).isTrue();
      assertThat(found.moments().end()).isEqualTo(found.planned().end());
      List<String> missed = new ArrayList<>();
      found.state().events().stream()
          .map(event -> event.what())
          .filter(Happening.CueMissed.class::isInstance)
          .forEach(what -> missed.add(((Happening.CueMissed) what).cue()));
      // Away from 100 s to 190 s after the first pour: full at 10 s, cycles each minute after it,
      // so that those at 130 s and at 190 s were due.
      assertThat(missed).containsExactly("0-agitate-2", "0-agitate-3");
      after.clock.pass(Duration.ofHours(1));
      assertThat(after.bench.look(run).state().phase()).isEqualTo(Phase.FINISHED);
    }
  }

  @Test
  void aConductorThatWasHeldUpSaysWhatWasMissed() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofSeconds(100));
      evening.clock.passUnwatched(Duration.ofSeconds(90));
      assertThat(gapsAndMissed(evening.bench.look(run).state())).hasSize(1);
      evening.clock.pass(Duration.ofSeconds(10));

      List<Happening> said = gapsAndMissed(evening.bench.look(run).state());

      // Last seen at 100 s, back at 190 s: the cycles at 130 s and at 190 s were due.
      assertThat(said)
          .containsExactly(
              new Happening.Gap(
                  Evening.START.plusSeconds(100), Evening.START.plusSeconds(190), Duration.ZERO),
              new Happening.CueMissed("0-agitate-2"),
              new Happening.CueMissed("0-agitate-3"));
      assertThat(gapsAndMissed(evening.bench.look(run).state())).isEqualTo(said);
      evening.clock.pass(Duration.ofHours(1));
      RunState after = evening.bench.look(run).state();
      assertThat(after.phase()).isEqualTo(Phase.FINISHED);
      assertThat(gapsAndMissed(after)).isEqualTo(said);
    }
  }

  @Test
  void whatAScreenToldByItsOwnPlanWasNotMissed() {
    long run;
    try (Evening before = evening()) {
      run = before.started();
      before.clock.pass(Duration.ofSeconds(100));
    }
    try (Evening after = evening()) {
      after.clock.passUnwatched(Duration.ofSeconds(190));
      after.bench.resume();
      after.bench.led(run, "laptop", Evening.START.plusSeconds(150));
      after.bench.led(run, "phone", Evening.START.plusSeconds(50));
      after.clock.pass(Duration.ofSeconds(20));
      RunState state = after.bench.look(run).state();
      assertThat(gapsAndMissed(state)).hasSize(1);
      assertThat(state.events())
          .filteredOn(event -> event.what() instanceof Happening.Note)
          .extracting(event -> ((Happening.Note) event.what()).text())
          .containsExactly("phone went on by the plan meanwhile; every cue was told");
    }
  }

  @Test
  void aSecondEndBeforeAnyAnswerForgetsNoMissedCue() {
    long run;
    try (Evening before = evening()) {
      run = before.started();
      before.clock.pass(Duration.ofSeconds(100));
    }
    try (Evening again = evening()) {
      again.clock.passUnwatched(Duration.ofSeconds(190));
      again.bench.resume();
      again.clock.pass(Duration.ofSeconds(5));
    }
    try (Evening after = evening()) {
      after.clock.passUnwatched(Duration.ofSeconds(260));
      after.bench.resume();
      after.clock.pass(Duration.ofSeconds(10));
      assertThat(gapsAndMissed(after.bench.look(run).state()))
          .filteredOn(Happening.CueMissed.class::isInstance)
          .containsExactly(
              new Happening.CueMissed("0-agitate-2"),
              new Happening.CueMissed("0-agitate-3"),
              new Happening.CueMissed("0-agitate-4"));
    }
  }

  @Test
  void aShortDelayIsNoGap() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofSeconds(100));
      evening.clock.passUnwatched(Duration.ofSeconds(9));

      assertThat(gapsAndMissed(evening.bench.look(run).state())).isEmpty();
    }
  }

  private static List<Happening> gapsAndMissed(RunState state) {
    return state.events().stream()
        .map(event -> event.what())
        .filter(what -> what instanceof Happening.Gap || what instanceof Happening.CueMissed)
        .toList();
  }

  @Test
  void aDeveloperThatEndedUnwatchedHasEndedByThePlan() {
    long run;
    try (Evening before = evening()) {
      run = before.started();
      before.clock.pass(Duration.ofSeconds(500));
    }
    try (Evening after = evening()) {
      after.clock.passUnwatched(Duration.ofSeconds(560));
      after.bench.resume();
      RunState state = after.bench.look(run).state();
      assertThat(state.current()).isEqualTo(1);
      assertThat(state.steps().get(0).drain().orElseThrow().at())
          .isEqualTo(Evening.START.plusSeconds(535));
    }
  }

  @Test
  void aClockSetBackWhileAwayIsSaid() {
    long run;
    try (Evening before = evening()) {
      run = before.started();
      before.clock.pass(Duration.ofSeconds(100));
    }
    try (Evening after = evening()) {
      after.clock.passUnwatched(Duration.ofSeconds(40));
      after.bench.resume();
      Happening.Gap gap =
          after.bench.look(run).state().events().stream()
              .map(event -> event.what())
              .filter(Happening.Gap.class::isInstance)
              .map(Happening.Gap.class::cast)
              .findFirst()
              .orElseThrow();
      assertThat(gap.clockJump()).isEqualTo(Duration.ofSeconds(-60));
    }
  }

  @Test
  void whatIsStoredFoldsToWhatIsShown() {
    try (Evening evening = evening()) {
      long run = evening.started();
      evening.clock.pass(Duration.ofMinutes(4));
      evening.send(run, 0, new Happening.Mishap("not agitated", "agitate now", empty()));
      evening.clock.pass(Duration.ofMinutes(8));
      RunState shown = evening.bench.look(run).state();
      RunState stored =
          evening.database.<RunState>read(session -> new Runs(session).state(run, List.of()));
      assertThat(stored).isEqualTo(shown);
    }
  }

  @Test
  void anUnknownRunIsSaid() {
    try (Evening evening = evening()) {
      assertThatThrownBy(() -> evening.bench.look(99))
          .isInstanceOf(NoSuchRunException.class)
          .hasMessage("there is no run 99");
    }
  }

  private static java.util.Optional<Duration> empty() {
    return java.util.Optional.empty();
  }
}
