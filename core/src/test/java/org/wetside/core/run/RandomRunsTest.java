package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.quantity.Temperature;

/** Random hands, screens and outages; after every event what must always hold is looked at. */
class RandomRunsTest {
  private static final int RUNS = 20;
  private static final int EVENTS = 80;

  /** Folding everything anew costs the square of the length: after every so many events. */
  private static final int FOLD_EVERY = 10;

  /** What may come once or not at all in a step, as its time is changed. */
  private static final Set<Act> WITHIN_A_STEP = Set.of(Act.AGITATE, Act.TAP, Act.REST, Act.READ);

  /** Events that say something and move nothing. */
  private static final Set<EventKind> WORDS =
      Set.of(
          EventKind.READING_TAKEN,
          EventKind.NOTE,
          EventKind.GAP,
          EventKind.CUE_MISSED,
          EventKind.MISHAP);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void whatMustHoldHoldsAfterEveryEvent(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < RUNS; i++) {
      oneRun(random, new EnumMap<>(EventKind.class));
    }
  }

  /** Otherwise the test above would hold because nothing happened. */
  @Test
  void everyKindOfEventIsAppliedManyTimes() {
    Map<EventKind, Integer> applied = new EnumMap<>(EventKind.class);
    Random random = new Random(26);
    for (int i = 0; i < 6 * RUNS; i++) {
      oneRun(random, applied);
    }
    for (EventKind kind : EventKind.values()) {
      assertThat(applied.getOrDefault(kind, 0)).as(kind.word()).isGreaterThan(10);
    }
  }

  @Tag("long")
  @Test
  void whatMustHoldHoldsForAVeryLongTime() {
    for (long seed = 1000; seed < 1060; seed++) {
      whatMustHoldHoldsAfterEveryEvent(seed);
    }
  }

  private static void oneRun(Random random, Map<EventKind, Integer> applied) {
    HandLedRun run = new HandLedRun();
    for (int i = 0; i < EVENTS; i++) {
      run.at(run.now().plusMillis(random.nextInt(60_000)));
      RunState before = run.state();
      List<Cue> cuesBefore = run.cues();
      RunEvent event = event(run, random);
      Outcome outcome = Judge.of(before, event);
      if (outcome instanceof Outcome.Applied || outcome instanceof Outcome.Noted) {
        run.storeOnly(event);
      }
      if (outcome instanceof Outcome.Applied) {
        applied.merge(event.kind(), 1, Integer::sum);
      }
      theRecordHolds(before, run.state(), event, outcome);
      thePlanHolds(run);
      noCueIsLostOrDoubled(run, before, cuesBefore, event, outcome);
      run.at(run.now());
    }
  }

  private static void theRecordHolds(
      RunState before, RunState after, RunEvent event, Outcome outcome) {
    if (after.sequence() % FOLD_EVERY == 0) {
      assertThat(RunState.replay(after.plan(), after.events())).isEqualTo(after);
    }
    List<RunEvent> events = after.events();
    for (int i = 0; i < events.size(); i++) {
      assertThat(events.get(i).sequence()).isEqualTo(i + 1L);
    }
    assertThat(events.subList(0, before.events().size()))
        .as("nothing stored is changed")
        .isEqualTo(before.events());
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
    assertThat(after.endedAt().isPresent()).isEqualTo(after.phase().over());
    if (after.phase() == Phase.FINISHED) {
      assertThat(after.steps())
          .as("whatever was pressed, every bath of a finished run has its moments")
          .allMatch(marks -> marks.pour().isPresent() && marks.drain().isPresent());
    }
  }

  private static void thePlanHolds(HandLedRun run) {
    RunState state = run.state();
    Instant last = Instant.MIN;
    List<Placement.Moments> moments = run.moments().steps();
    for (int i = 0; i < moments.size(); i++) {
      Placement.Moments at = moments.get(i);
      assertThat(List.of(last, at.begin(), at.full(), at.drain(), at.end()))
          .isSortedAccordingTo(Instant::compareTo);
      last = at.end();
      if (state.plan().step(i).kind().developing()) {
        assertThat(state.steps().get(i).extra()).isLessThanOrEqualTo(Duration.ZERO);
        assertThat(state.phase() == Phase.WAITING && state.current() == i).isFalse();
      }
    }
  }

  /** Every cue is once on the sheet: past, missed, or still to come. */
  private static void noCueIsLostOrDoubled(
      HandLedRun run, RunState before, List<Cue> cuesBefore, RunEvent event, Outcome outcome) {
    List<Cue> cues = run.cues();
    assertThat(cues).extracting(Cue::id).doesNotHaveDuplicates();
    int steps = before.steps().size();
    assertThat(cues).filteredOn(cue -> cue.act() == Act.POUR).hasSize(steps);
    assertThat(cues).filteredOn(cue -> cue.act() == Act.DRAIN).hasSize(steps);
    assertThat(cues).filteredOn(cue -> cue.act() == Act.HANG).hasSize(1);
    List<String> missed =
        run.state().applied().stream()
            .filter(one -> one.what() instanceof Happening.CueMissed)
            .map(one -> ((Happening.CueMissed) one.what()).cue())
            .toList();
    assertThat(missed).as("missed once, however often it is said").doesNotHaveDuplicates();

    boolean words = WORDS.contains(event.kind()) && !givesNewTime(event);
    if (words || !(outcome instanceof Outcome.Applied)) {
      assertThat(cues).as("%s moves nothing", event.what()).isEqualTo(cuesBefore);
    } else {
      Set<String> now = cues.stream().map(Cue::id).collect(Collectors.toSet());
      Set<Integer> changed =
          Stream.of(event.step(), before.current(), run.state().current())
              .collect(Collectors.toSet());
      assertThat(cuesBefore)
          .as("none is lost by %s", event.what())
          .filteredOn(cue -> !now.contains(cue.id()))
          .allMatch(cue -> WITHIN_A_STEP.contains(cue.act()))
          .allMatch(cue -> changed.contains(cue.step()) || event.kind() == EventKind.UNDONE);
    }
  }

  private static boolean givesNewTime(RunEvent event) {
    return event.what() instanceof Happening.Mishap mishap && mishap.newTime().isPresent();
  }

  private static RunEvent event(HandLedRun run, Random random) {
    String screen = random.nextBoolean() ? "laptop" : "phone";
    Happening what = happening(run, random, screen);
    boolean next = what instanceof Happening.WaitWithdrawn;
    int near = run.state().current() + (next ? 1 : random.nextInt(3) - 1);
    int step = Math.max(0, Math.min(3, near));
    Instant said = run.now().minusMillis(random.nextInt(2_000));
    return run.sent(screen, step, what, "", said);
  }

  private static Happening happening(HandLedRun run, Random random, String screen) {
    Temperature read = Temperature.ofCelsius(15 + random.nextInt(12));
    boolean yes = random.nextBoolean();
    Duration some = Duration.ofSeconds(1 + random.nextInt(200));
    return switch (random.nextInt(22)) {
      case 0, 1 -> new Happening.Started(List.of(), true);
      case 2, 3 -> new Happening.StepBegun(Moment.FULL, Origin.PRESSED, yes);
      case 4 -> new Happening.StepBegun(Moment.POUR, Origin.PRESSED, yes);
      case 5 -> new Happening.StepDrained(Origin.PRESSED, yes);
      case 6 -> new Happening.Lengthened(some, "slow");
      case 7 -> new Happening.CutShort(some.dividedBy(4), "", yes);
      case 8 -> new Happening.WaitAsked();
      case 9, 19, 20 -> new Happening.WaitWithdrawn();
      case 10 -> new Happening.ReadingTaken("2", read, read, yes);
      case 11 -> new Happening.Note("words");
      case 12 -> new Happening.Mishap("not agitated", "", Optional.empty());
      case 13 -> new Happening.Mishap("too warm", "", Optional.of(some.plusSeconds(300)));
      case 14 -> new Happening.WaitingBegun(Origin.PRESSED);
      case 15 -> new Happening.Gap(run.now().minus(some), run.now(), Duration.ZERO);
      case 16 -> new Happening.CueMissed(anyCue(run, random));
      case 17 -> new Happening.Finished(Origin.PRESSED);
      case 18 ->
          random.nextInt(6) == 0 ? new Happening.Abandoned("it leaks") : new Happening.WaitAsked();
      default ->
          new Happening.Undone(
              UndoRules.lastOf(run.state(), screen).map(RunEvent::id).orElse("nothing"));
    };
  }

  private static String anyCue(HandLedRun run, Random random) {
    List<Cue> cues = run.cues();
    return cues.get(random.nextInt(cues.size())).id();
  }
}
