package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.DoseBasis;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Judge;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunPlan;
import org.wetside.core.run.RunState;
import org.wetside.core.source.Standing;
import org.wetside.core.thermal.DevelopmentRate;
import org.wetside.reference.BuiltInProcesses;

/** A nine minute developer, its tank full at 10 s, and a fixer that gave way to another tank. */
class MovedWordsTest {
  private static final Instant START = Instant.parse("2026-01-14T19:00:00Z");
  private static final int DEVELOPER = 0;

  private RunState state;
  private int fixer;

  @BeforeEach
  void begin() {
    FilmProcess process =
        BuiltInProcesses.all().stream()
            .filter(one -> one.slug().equals("small-tank"))
            .findFirst()
            .orElseThrow()
            .withDevelopment(Duration.ofMinutes(9));
    fixer = process.steps().stream().map(step -> step.kind()).toList().indexOf(StepKind.FIXER);
    TemperatureRange span =
        new TemperatureRange(Temperature.ofCelsius(18), Temperature.ofCelsius(24));
    DevelopmentRate rate =
        new DevelopmentRate(
            0.08, Temperature.ofCelsius(20), span, Standing.COMPUTED, "invented for a test");
    state =
        RunState.ready(
            new RunPlan(
                process.steps(),
                List.of(),
                Optional.of(
                    new DoseBasis(
                        rate,
                        Optional.empty(),
                        DoseBasis.USUAL_TANK_J_PER_K,
                        Optional.of(Volume.ofMillilitres(600))))));
    happens(0, "laptop", DEVELOPER, new Happening.Started(List.of(), false));
  }

  @Test
  void nothingIsSaidOfAStepThatStandsWhereItWasPlanned() {
    assertThat(words()).isEmpty();
    givesWay(20);
    assertThat(words()).isEmpty();
  }

  @Test
  void anEarlyPressIsNotLaidToTheOtherTank() {
    happens(4, "laptop", DEVELOPER, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, true));
    givesWay(4);
    assertThat(words()).isEqualTo("the last press");
  }

  @Test
  void aReadingKeepsItsWordWhenAnotherStepGivesWayAfterIt() {
    reading(110, 19);
    givesWay(111);
    assertThat(words()).isEqualTo("the last reading");
  }

  @Test
  void aMishapWithoutANewTimeMovedNothing() {
    reading(110, 19);
    happens(120, "laptop", DEVELOPER, new Happening.Mishap("lid came off", "", Optional.empty()));
    assertThat(words()).isEqualTo("the last reading");
  }

  @Test
  void aStepThatDidNotMoveItselfWasMovedByTheOneBefore() {
    reading(110, 19);
    Instant due = Placement.of(state, START).steps().get(DEVELOPER).drain();
    double drained = Duration.between(START, due).toMillis() / 1000.0;
    happens(10, RunEvent.CONDUCTOR, DEVELOPER, begun(Moment.FULL));
    happens(
        drained, RunEvent.CONDUCTOR, DEVELOPER, new Happening.StepDrained(Origin.PLANNED, false));
    happens(drained + 15, RunEvent.CONDUCTOR, DEVELOPER + 1, begun(Moment.POUR));
    assertThat(state.current()).isEqualTo(DEVELOPER + 1);
    assertThat(words()).isEqualTo("the last reading");
  }

  @Test
  void theStepThatGaveWaySaysTheOtherTankWhileItGoesOn() {
    givesWay(20);
    while (state.current() < fixer) {
      int next = state.current() + 1;
      Instant end = Placement.of(state, START).steps().get(state.current()).end();
      double at = Duration.between(START, end).toMillis() / 1000.0;
      happens(at, RunEvent.CONDUCTOR, next, begun(Moment.POUR));
    }
    assertThat(words()).isEqualTo("the other tank");
  }

  private static Happening begun(Moment moment) {
    return new Happening.StepBegun(moment, Origin.PLANNED, false);
  }

  private void reading(double second, double celsius) {
    Temperature read = Temperature.ofCelsius(celsius);
    happens(second, "laptop", DEVELOPER, new Happening.ReadingTaken("", read, read, true));
  }

  /** As the conductor does it for the hands: a step that is still to come lasts longer. */
  private void givesWay(double second) {
    Happening longer = new Happening.Lengthened(Duration.ofSeconds(30), "so that hands are free");
    happens(second, RunEvent.CONDUCTOR, fixer, longer);
  }

  private void happens(double second, String screen, int step, Happening what) {
    Instant at = START.plusMillis(Math.round(second * 1000));
    long sequence = state.sequence() + 1;
    RunEvent event = new RunEvent("event-" + sequence, sequence, step, what, at, at, screen, "");
    assertThat(Judge.of(state, event)).isEqualTo(new Outcome.Applied());
    state = state.after(event);
  }

  private String words() {
    Placement planned = Placement.planned(state.plan(), START);
    return MovedWords.of(state, Placement.of(state, START), planned);
  }
}
