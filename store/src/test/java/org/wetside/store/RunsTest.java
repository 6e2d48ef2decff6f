package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cycle;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Light;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunPlan;
import org.wetside.core.run.RunState;
import org.wetside.core.source.Standing;

class RunsTest {
  private static final Instant OPENED = Instant.parse("2026-01-14T19:00:00.120Z");

  @TempDir Path home;
  private Database database;

  @BeforeEach
  void open() {
    database = Database.open(home.resolve("wetside.db"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void aRunReadsBackAsItWasOpened() {
    RunCard kept = open(card());
    RunCard found = database.<RunCard>read(s -> new Runs(s).find(kept.id()).orElseThrow());
    assertThat(found).isEqualTo(kept);
    List<Step> steps = database.<List<Step>>read(s -> new Runs(s).steps(kept.id()));
    assertThat(steps).isEqualTo(steps());
    List<Optional<Volume>> taken = database.read(s -> new Runs(s).taken(kept.id()));
    assertThat(taken).containsExactly(Optional.of(Volume.ofMillilitres(300)), Optional.empty());
  }

  @Test
  void everyKindOfEventReadsBackAsItWasAdded() {
    RunCard kept = open(card());
    List<RunEvent> events = new ArrayList<>();
    for (Happening what : everyKind()) {
      long sequence = events.size() + 1L;
      events.add(
          new RunEvent(
              "event-" + sequence,
              sequence,
              1,
              what,
              OPENED.plusSeconds(sequence),
              OPENED.plusSeconds(sequence).plusMillis(7),
              "laptop",
              "Space"));
    }
    RunState ready = RunState.ready(new RunPlan(steps(), List.of()));
    database.change(s -> events.forEach(event -> new Runs(s).append(kept.id(), event, ready)));
    List<RunEvent> found = database.<List<RunEvent>>read(s -> new Runs(s).events(kept.id()));
    assertThat(found).isEqualTo(events);
  }

  @Test
  void oneEventIsKeptOnce() {
    RunCard kept = open(card());
    RunState ready = RunState.ready(new RunPlan(steps(), List.of()));
    RunEvent note =
        new RunEvent("same-id", 1, 0, new Happening.Note("x"), OPENED, OPENED, "laptop", "");
    database.change(s -> new Runs(s).append(kept.id(), note, ready));
    RunEvent again =
        new RunEvent("same-id", 2, 0, new Happening.Note("x"), OPENED, OPENED, "laptop", "");
    assertThatThrownBy(() -> database.change(s -> new Runs(s).append(kept.id(), again, ready)))
        .isInstanceOf(StoreException.class);
  }

  @Test
  void thePhaseStandsBesideTheEvents() {
    RunCard kept = open(card());
    RunState ready = RunState.ready(new RunPlan(steps(), List.of()));
    RunEvent started =
        new RunEvent(
            "start-id", 1, 0, new Happening.Started(List.of(), true), OPENED, OPENED, "a", "");
    database.change(s -> new Runs(s).append(kept.id(), started, ready.after(started)));
    Phase phase = database.read(s -> new Runs(s).phase(kept.id()).orElseThrow());
    assertThat(phase).isEqualTo(Phase.RUNNING);
    List<Long> underWay = database.read(s -> new Runs(s).underWay());
    assertThat(underWay).containsExactly(kept.id());
  }

  @Test
  void theLastSignOfLifeIsTheLast() {
    database.change(s -> new Runs(s).alive(OPENED));
    database.change(s -> new Runs(s).alive(OPENED.plusSeconds(5)));
    Optional<Instant> last = database.read(s -> new Runs(s).lastAlive());
    assertThat(last).contains(OPENED.plusSeconds(5));
  }

  @Test
  void anOwnProcessReadsBackAndCanBeReplacedAndRemoved() {
    FilmProcess own = new FilmProcess("mine", "Mine", "for the cold", false, steps());
    database.change(s -> new Processes(s).keep(own, OPENED));
    FilmProcess other = new FilmProcess("mine", "Mine again", "", false, steps().subList(0, 1));
    Optional<FilmProcess> first = database.read(s -> new Processes(s).find("mine"));
    assertThat(first).contains(own);
    database.change(s -> new Processes(s).keep(other, OPENED));
    List<FilmProcess> all = database.read(s -> new Processes(s).all());
    assertThat(all).containsExactly(other);
    assertThat(database.<Boolean>inTransaction(s -> new Processes(s).remove("mine"))).isTrue();
    assertThat(database.<Boolean>inTransaction(s -> new Processes(s).remove("mine"))).isFalse();
  }

  private RunCard open(RunCard card) {
    return database.inTransaction(
        s ->
            new Runs(s)
                .add(
                    card,
                    steps(),
                    List.of(Optional.of(Volume.ofMillilitres(300)), Optional.empty())));
  }

  private static RunCard card() {
    return new RunCard(
        0,
        Optional.empty(),
        "an evening",
        "Double",
        List.of(new RollInTank("A-1", "a film", 1, "bottom reel", UnitOfUse.ofRolls(0.75))),
        "small-tank",
        "Small tank",
        "a developer",
        Dilution.parse("1+1"),
        Optional.of(Temperature.ofCelsius(20)),
        Standing.PUBLISHED,
        "a leaflet",
        Optional.of(Volume.ofMillilitres(600)),
        OPENED);
  }

  private static List<Step> steps() {
    Step developer =
        new Step(
            StepKind.DEVELOPER,
            Optional.of("D"),
            Optional.of(Duration.ofMinutes(9)),
            Step.POUR_IN,
            Step.DRAIN_LEAD,
            AgitationSchedule.intervals(
                Manner.INVERSION,
                Cycle.ofLength(Duration.ofSeconds(30)),
                Duration.ofMinutes(1),
                Cycle.ofInversions(5, Cycle.PACE),
                true),
            Optional.of(
                new TemperatureRange(Temperature.ofCelsius(19.5), Temperature.ofCelsius(20.5))),
            AfterUse.discard(),
            Light.DARK,
            Optional.empty(),
            Standing.PUBLISHED,
            "DV-S12");
    Step fixer =
        new Step(
            StepKind.FIXER,
            Optional.of("F"),
            Optional.of(Duration.ofMinutes(5)),
            Step.POUR_IN,
            Step.DRAIN_LEAD,
            AgitationSchedule.rotary(50),
            Optional.empty(),
            AfterUse.backTo("F"),
            Light.DARK,
            Optional.of(Duration.ofMinutes(10)),
            Standing.COMMON_PRACTICE,
            "");
    return List.of(developer, fixer);
  }

  private static List<Happening> everyKind() {
    Temperature read = Temperature.ofCelsius(19.2);
    return List.of(
        new Happening.Started(List.of("lid-locked", "tug"), true),
        new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false),
        new Happening.StepDrained(Origin.PLANNED, true),
        new Happening.Lengthened(Duration.ofSeconds(30), "slow to clear"),
        new Happening.CutShort(Duration.ofSeconds(20), "phone rang", true),
        new Happening.WaitingBegun(Origin.PRESSED),
        new Happening.WaitAsked(),
        new Happening.WaitWithdrawn(),
        new Happening.ReadingTaken("glass", read, Temperature.ofCelsius(19.0), false),
        new Happening.CueMissed("0-agitate-3"),
        new Happening.Mishap("tank leaks", "hold it", Optional.of(Duration.ofMinutes(8))),
        new Happening.Mishap("lid came off", "close it", Optional.empty()),
        new Happening.Note("seen late"),
        new Happening.Gap(OPENED, OPENED.plusSeconds(48), Duration.ofSeconds(-3)),
        new Happening.Undone("event-3"),
        new Happening.Finished(Origin.PLANNED),
        new Happening.Abandoned("film ends"));
  }
}
