package org.wetside.app.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollLine;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.source.Standing;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;

/** One load of two rolls with three bottles, nine minutes of developer, on a real database. */
final class Evening implements AutoCloseable {
  /** The whole list of a tank with reels. */
  static final List<String> TICKS =
      ClosingItem.usual(Vessel.SMALL_TANK).stream().map(ClosingItem::id).toList();

  static final Instant START = Instant.parse("2026-01-14T19:00:00Z");

  final HandClock clock;
  final Database database;
  final Bench bench;
  final long load;
  private int sent;

  Evening(Path file) {
    this(file, new HandClock(START));
  }

  private Evening(Path file, HandClock clock) {
    this(file, clock, clock);
  }

  /**
   * @param clock moved by the test, and the alarm
   * @param read what the conductor reads the time from
   */
  Evening(Path file, HandClock clock, Clock read) {
    this.clock = clock;
    database = Database.open(file);
    bench = new Bench(() -> database, read, clock);
    load = database.inTransaction(session -> new Loads(session).find(1)).isPresent() ? 1 : fill();
  }

  private long fill() {
    return database.inTransaction(
        session -> {
          for (String number : List.of("A-1", "A-2")) {
            Roll roll =
                new Roll(
                    number,
                    RollLine.parse("135 36 some film @400 \"a gate\"").withNumber(number),
                    Optional.empty(),
                    START,
                    RollState.LOADED,
                    Optional.empty());
            new Rolls(session).add(roll);
            new RollSearch(session).describe(roll);
          }
          bottle(session, "D", BottleRole.STOCK, BathKind.DEVELOPER, true);
          bottle(session, "S", BottleRole.WORKING, BathKind.STOP_BATH, false);
          bottle(session, "F", BottleRole.WORKING, BathKind.FIXER, false);
          return new Loads(session).add(load("Double", List.of("A-1", "A-2"))).id();
        });
  }

  private static Load load(String tank, List<String> rolls) {
    return new Load(
        0,
        LoadState.PLANNED,
        START,
        rolls.stream().map(Evening::place).toList(),
        tank,
        "small-tank",
        new Recipe("soup", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
        new ChosenTime(Duration.ofMinutes(9), Standing.PUBLISHED, "leaflet", Optional.empty()),
        Volume.ofMillilitres(600),
        Map.of(BathKind.DEVELOPER, "D", BathKind.STOP_BATH, "S", BathKind.FIXER, "F"),
        Optional.empty(),
        "");
  }

  /** Another load, in a tank of its own, at the Bench; its first pour is still to come. */
  long second() {
    long other =
        database.inTransaction(
            session -> {
              new Rolls(session)
                  .add(
                      new Roll(
                          "B-1",
                          RollLine.parse("135 36 some film @400 \"a gate\"").withNumber("B-1"),
                          Optional.empty(),
                          START,
                          RollState.LOADED,
                          Optional.empty()));
              return new Loads(session).add(load("Single", List.of("B-1"))).id();
            });
    return new StartRun(() -> database, clock, bench).of(other).card().id();
  }

  private static void bottle(
      org.wetside.store.Session session,
      String letter,
      BottleRole role,
      BathKind bath,
      boolean oneShot) {
    new Bottles(session)
        .add(
            BottleLabel.of(letter, "bath " + letter, role, bath, Volume.ofLitres(1))
                .with(oneShot ? AfterPouring.ONE_SHOT : AfterPouring.REUSED),
            Volume.ofLitres(1),
            START);
  }

  private static Load.Place place(String number) {
    return new Load.Place(number, Optional.empty(), Optional.empty());
  }

  BenchSnapshot open() {
    return new StartRun(() -> database, clock, bench).of(load);
  }

  Answer send(long run, int step, Happening what) {
    return send(run, step, what, "laptop");
  }

  Answer send(long run, int step, Happening what, String screen) {
    sent++;
    return bench.take(
        run,
        new SentEvent(
            "sent-" + screen + "-" + START + sent,
            Optional.of(step),
            what,
            clock.instant(),
            screen,
            ""));
  }

  /** Everything ticked, the first pour begins. */
  long started() {
    long run = open().card().id();
    send(run, 0, new Happening.Started(TICKS, false));
    return run;
  }

  double left(String letter) {
    return database.<Double>read(
        session -> new Bottles(session).find(letter).orElseThrow().left().millilitres());
  }

  RollState stateOf(String roll) {
    return database.<RollState>read(session -> new Rolls(session).find(roll).orElseThrow().state());
  }

  @Override
  public void close() {
    bench.close();
    database.close();
  }
}
