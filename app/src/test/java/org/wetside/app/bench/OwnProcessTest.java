package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.process.ProcessDraft;
import org.wetside.app.process.ShowCues;
import org.wetside.app.process.StepDraft;
import org.wetside.app.process.StepField;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Phase;
import org.wetside.core.source.Standing;

/** A process of one's own leads a run, and the record outlives it. Everything here is invented. */
class OwnProcessTest {
  private final HandClock clock = new HandClock(Evening.START);
  private Wetside wetside;
  private Bench bench;
  private Load load;

  @BeforeEach
  void aLoadLedByAnOwnProcess(@TempDir Path home) {
    wetside = Wetside.open(home, clock);
    bench = wetside.benchWith(clock);
    wetside
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
    wetside.addRolls().lines("A-1 135 36 TRI-X 400 @400 \"one\"");
    wetside.keepProcess().add(withPreSoak("90 s")).orRefuse();
    load = wetside.makeLoad().make(wish());
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  @Test
  void itLeadsTheRunFromThePreSoakToTheEnd() {
    long run = wetside.startRun().of(load.id()).card().id();
    assertThat(bench.look(run).card().processName()).isEqualTo("Harbour tank");
    send(run, "first", new Happening.Started(Evening.TICKS, false));
    clock.pass(Duration.ofSeconds(99));
    assertThat(bench.look(run).state().steps().get(1).pour()).isEmpty();
    clock.pass(Duration.ofSeconds(1));
    // pour-in 10 s, then 90 s to the next pour
    assertThat(bench.look(run).state().steps().get(1).pour().orElseThrow().at())
        .isEqualTo(Evening.START.plusSeconds(100));
    clock.pass(Duration.ofHours(1));
    assertThat(bench.look(run).state().phase()).isEqualTo(Phase.FINISHED);
  }

  @Test
  void theRecordStaysAsItWasWhenTheProcessChangesAndGoes() {
    long run = wetside.startRun().of(load.id()).card().id();
    List<Step> asOpened = bench.look(run).state().plan().steps();
    assertThat(asOpened.get(0).kind()).isEqualTo(StepKind.PRE_SOAK);
    wetside.keepProcess().change("harbour-tank", withPreSoak("5:00")).orRefuse();
    assertThat(bench.look(run).state().plan().steps()).isEqualTo(asOpened);
    ShowCues.Cues cues = wetside.showCues().of(load.id(), Optional.empty());
    assertThat(cues.steps().get(0).step().duration()).contains(Duration.ofSeconds(90));
    assertThatThrownBy(() -> wetside.removeProcess().remove("harbour-tank"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("load " + load.id());
    send(run, "first", new Happening.Started(Evening.TICKS, false));
    send(run, "last", new Happening.Abandoned("the tank leaked"));
    assertThat(wetside.removeProcess().remove("harbour-tank").name()).isEqualTo("Harbour tank");
    assertThat(bench.look(run).state().plan().steps()).isEqualTo(asOpened);
    assertThat(bench.look(run).card().processName()).isEqualTo("Harbour tank");
    assertThat(wetside.showCues().of(load.id(), Optional.empty()).steps()).isEqualTo(cues.steps());
  }

  @Test
  void whileALoadWaitsForItItStaysAndTheLoadFollowsItsChange() {
    assertThat(wetside.removeProcess().using("harbour-tank")).containsExactly(load.id());
    assertThatThrownBy(() -> wetside.removeProcess().remove("harbour-tank"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("take it apart");
    wetside.keepProcess().change("harbour-tank", withPreSoak("2:00")).orRefuse();
    BenchSnapshot opened = wetside.startRun().of(load.id());
    assertThat(opened.state().plan().step(0).duration()).contains(Duration.ofMinutes(2));
  }

  @Test
  void aLoadTakenApartLetsItGo() {
    wetside.makeLoad().dissolve(load.id());
    wetside.removeProcess().remove("harbour-tank");
    assertThat(wetside.findProcess().find("harbour-tank")).isEmpty();
  }

  private void send(long run, String id, Happening what) {
    bench.take(run, new SentEvent(id, Optional.of(0), what, clock.instant(), "laptop", ""));
  }

  private ProcessDraft withPreSoak(String time) {
    ProcessDraft copy = ProcessDraft.of(wetside.findProcess().of("small-tank"));
    List<StepDraft> steps = new ArrayList<>(copy.steps());
    steps.add(0, new StepDraft(Map.of(StepField.KIND, "pre-soak", StepField.TIME, time)));
    return new ProcessDraft("harbour-tank", "Harbour tank", "", steps);
  }

  private static LoadWish wish() {
    return new LoadWish(
        List.of("A-1"),
        "Double",
        "harbour-tank",
        new Recipe("soup", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
        Optional.of(
            new ChosenTime(Duration.ofMinutes(9), Standing.PUBLISHED, "leaflet", Optional.empty())),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        "");
  }
}
