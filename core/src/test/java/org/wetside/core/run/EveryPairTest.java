package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetside.core.run.HandLedRun.DEVELOPER;
import static org.wetside.core.run.HandLedRun.FIXER;
import static org.wetside.core.run.HandLedRun.STOP;
import static org.wetside.core.run.HandLedRun.WASH;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.quantity.Temperature;

/**
 * Every kind of event sent to a run in every phase: refused with the phase where the table says so,
 * otherwise it goes through with what it says.
 */
class EveryPairTest {
  private static final Happening WORDS = new Happening.Note("words");

  static List<Arguments> pairs() {
    List<Arguments> pairs = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      for (EventKind kind : EventKind.values()) {
        pairs.add(Arguments.of(phase, kind));
      }
    }
    return pairs;
  }

  @ParameterizedTest(name = "{1} while {0}")
  @MethodSource("pairs")
  void goesThroughOrIsRefusedAsTheTableSays(Phase phase, EventKind kind) {
    HandLedRun run = in(phase, kind);
    assertThat(run.state().phase()).isEqualTo(phase);
    RunState before = run.state();
    Outcome outcome = run.send(stepOf(phase, kind), sample(run, kind));
    if (Transitions.allows(phase, kind)) {
      assertThat(outcome).isEqualTo(new Outcome.Applied());
    } else {
      assertThat(outcome)
          .isEqualTo(
              new Outcome.Refused(
                  "the run is " + phase.word() + ": \"" + kind.word() + "\" is not possible"));
      assertThat(run.state()).isEqualTo(before);
    }
  }

  /** A run in the phase, at a point where an event of this kind makes sense if it ever does. */
  private static HandLedRun in(Phase phase, EventKind kind) {
    HandLedRun run =
        switch (phase) {
          case READY -> new HandLedRun();
          case RUNNING -> HandLedRun.begun().at(kind == EventKind.FINISHED ? 1100 : 610);
          case WAITING -> kind == EventKind.FINISHED ? waitingInTheWash() : waitingInTheStopBath();
          case FINISHED -> HandLedRun.begun().at(1215);
          case ABANDONED -> givenUp();
        };
    if (kind == EventKind.WAIT_WITHDRAWN) {
      run.send(WASH, new Happening.WaitAsked());
    }
    if (kind == EventKind.UNDONE) {
      run.send(DEVELOPER, WORDS);
    }
    return run;
  }

  private static HandLedRun waitingInTheStopBath() {
    HandLedRun run = HandLedRun.begun().at(300);
    run.send(FIXER, new Happening.WaitAsked());
    return run.at(600);
  }

  private static HandLedRun waitingInTheWash() {
    HandLedRun run = HandLedRun.begun().at(1100);
    run.send(WASH, new Happening.WaitingBegun(Origin.PRESSED));
    return run;
  }

  private static HandLedRun givenUp() {
    HandLedRun run = HandLedRun.begun().at(100);
    run.send(DEVELOPER, new Happening.Abandoned("it leaks"));
    return run;
  }

  private static int stepOf(Phase phase, EventKind kind) {
    return switch (kind) {
      case STARTED, UNDONE, FINISHED, ABANDONED, NOTE, GAP -> DEVELOPER;
      case WAIT_ASKED, WAIT_WITHDRAWN -> WASH;
      default -> phase == Phase.WAITING ? STOP : FIXER;
    };
  }

  private static Happening sample(HandLedRun run, EventKind kind) {
    Duration some = Duration.ofSeconds(20);
    Temperature read = Temperature.ofCelsius(20);
    return switch (kind) {
      case STARTED -> new Happening.Started(List.of(), true);
      case STEP_BEGUN -> HandLedRun.full();
      case STEP_DRAINED -> HandLedRun.drain();
      case LENGTHENED -> new Happening.Lengthened(some, "slow to clear");
      case CUT_SHORT -> new Happening.CutShort(some, "cleared", false);
      case WAITING_BEGUN -> new Happening.WaitingBegun(Origin.PRESSED);
      case WAIT_ASKED -> new Happening.WaitAsked();
      case WAIT_WITHDRAWN -> new Happening.WaitWithdrawn();
      case READING_TAKEN -> new Happening.ReadingTaken("2", read, read, false);
      case CUE_MISSED -> new Happening.CueMissed("2-agitate-1");
      case MISHAP -> new Happening.Mishap("not agitated", "", Optional.empty());
      case NOTE -> WORDS;
      case GAP -> new Happening.Gap(run.now().minus(some), run.now(), Duration.ZERO);
      case UNDONE ->
          new Happening.Undone(
              UndoRules.lastOf(run.state(), "laptop").map(RunEvent::id).orElse("nothing"));
      case FINISHED -> new Happening.Finished(Origin.PRESSED);
      case ABANDONED -> new Happening.Abandoned("it leaks");
    };
  }
}
