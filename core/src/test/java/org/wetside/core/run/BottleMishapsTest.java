package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.SomeSteps;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.run.BottleMishaps.InDoubt;
import org.wetside.core.shelf.BottleMark;

/** Which bottles a mishap leaves in doubt: developer D, stop bath S, a rinse, fixer F, a wash. */
class BottleMishapsTest {
  private static final Instant START = Instant.parse("2026-01-14T19:00:00Z");
  private static final int DEVELOPER = 0;
  private static final int STOP = 1;
  private static final int RINSE = 2;
  private static final int FIXER = 3;
  private static final int WASH = 4;

  private RunState state = RunState.ready(new RunPlan(steps("S"), List.of()));

  BottleMishapsTest() {
    send(DEVELOPER, new Happening.Started(List.of(), true));
  }

  @Test
  void theBathsOwnBottleAndTheOneThatWasNamed() {
    send(DEVELOPER, told(MishapAdvice.WRONG_BOTTLE, ""));
    assertThat(inDoubt()).containsExactly(wrong("D"));
    send(DEVELOPER, told(MishapAdvice.WRONG_BOTTLE, "F"));
    assertThat(inDoubt()).containsExactly(wrong("D"), wrong("F"));
  }

  @Test
  void waterHasNoBottleOfItsOwn() {
    send(WASH, told(MishapAdvice.WRONG_BOTTLE, "F"));
    assertThat(inDoubt()).containsExactly(wrong("F"));
  }

  @Test
  void whatIsTakenBackLeavesNoDoubt() {
    send(DEVELOPER, told(MishapAdvice.WRONG_BOTTLE, "F"));
    RunEvent last = state.events().get(state.events().size() - 1);
    send(DEVELOPER, new Happening.Undone(last.id()));
    assertThat(state.takenBack()).contains(last.id());
    assertThat(inDoubt()).isEmpty();
  }

  @Test
  void aForgottenRinseIsToldBeforeTheNextBathOrInIt() {
    InDoubt fixer = new InDoubt("F", BottleMark.TEST_FIRST, "no rinse before the fixer");
    InDoubt stop = new InDoubt("S", BottleMark.TEST_FIRST, "no rinse before the stop bath");
    assertThat(afterNoRinseToldIn(DEVELOPER)).containsExactly(stop);
    assertThat(afterNoRinseToldIn(STOP)).containsExactly(fixer);
    assertThat(afterNoRinseToldIn(RINSE)).containsExactly(fixer);
    assertThat(afterNoRinseToldIn(FIXER)).containsExactly(fixer);
    assertThat(afterNoRinseToldIn(WASH)).as("no bottle comes after it").isEmpty();
  }

  @Test
  void whatIsThrownAwayLeavesNoBottleInDoubt() {
    state = RunState.ready(new RunPlan(steps(""), List.of()));
    send(DEVELOPER, new Happening.Started(List.of(), true));
    send(DEVELOPER, told(MishapAdvice.NO_RINSE, ""));
    assertThat(inDoubt()).isEmpty();
  }

  @Test
  void noOtherMishapMarksABottle() {
    send(DEVELOPER, told("tank leaks", "F"));
    send(DEVELOPER, told(MishapAdvice.WRONG_DILUTION, "1+3"));
    assertThat(inDoubt()).isEmpty();
  }

  private Iterable<InDoubt> afterNoRinseToldIn(int step) {
    send(step, told(MishapAdvice.NO_RINSE, ""));
    RunState told = state;
    send(step, new Happening.Undone(state.events().get(state.events().size() - 1).id()));
    return BottleMishaps.of(told);
  }

  private Iterable<InDoubt> inDoubt() {
    return BottleMishaps.of(state);
  }

  private static InDoubt wrong(String letter) {
    return new InDoubt(letter, BottleMark.DO_NOT_USE, "wrong bottle, decide");
  }

  private static Happening told(String what, String about) {
    return new Happening.Mishap(what, "", Optional.empty(), about);
  }

  private void send(int step, Happening what) {
    long next = state.sequence() + 1;
    Instant at = START.plusSeconds(next);
    RunEvent event = new RunEvent("sent-" + next, next, step, what, at, at, "laptop", "");
    assertThat(Judge.of(state, event)).isEqualTo(new Outcome.Applied());
    state = state.after(event);
  }

  /** The stop bath goes back to that bottle, or is thrown away. */
  private static List<Step> steps(String stopBack) {
    Step stop = SomeSteps.step(StepKind.STOP_BATH, "S", 30, AgitationSchedule.continuous());
    return List.of(
        SomeSteps.step(StepKind.DEVELOPER, "D", 540, SomeSteps.handbook()),
        stopBack.isEmpty() ? stop : stop.withBottle(Optional.of("S"), AfterUse.backTo(stopBack)),
        SomeSteps.step(StepKind.RINSE, "", 60, AgitationSchedule.none()),
        SomeSteps.step(StepKind.FIXER, "F", 300, SomeSteps.handbook()),
        SomeSteps.step(StepKind.WASH, "", 600, AgitationSchedule.none()));
  }
}
