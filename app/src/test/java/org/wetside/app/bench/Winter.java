package org.wetside.app.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.checks.BeforePour;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollLine;
import org.wetside.core.plan.RollState;
import org.wetside.core.plan.Tank;
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
import org.wetside.store.Tanks;

/** Many evenings with two tanks on a real database, one roll each. */
final class Winter implements AutoCloseable {
  private static final Instant FIRST = Instant.parse("2026-01-04T19:00:00Z");
  private static final List<String> TICKS =
      ClosingItem.usual(Vessel.SMALL_TANK).stream().map(ClosingItem::id).toList();

  final HandClock clock = new HandClock(FIRST);
  final Database database;
  final Bench bench;
  private int sent;
  private int rolls;

  Winter(Path file) {
    database = Database.open(file);
    bench = new Bench(() -> database, clock, clock);
    tank("Double", 650);
    tank("Single", 400);
    bottle("D", BottleRole.STOCK, BathKind.DEVELOPER);
    bottle("F", BottleRole.WORKING, BathKind.FIXER);
  }

  void tank(String name, double holdsMl) {
    database.change(
        session ->
            new Tanks(session)
                .put(
                    new Tank(
                        name,
                        Vessel.SMALL_TANK,
                        List.of(new Tank.Room(FilmFormat.SMALL, 1, Volume.ofMillilitres(300))),
                        Volume.ofMillilitres(holdsMl))));
  }

  private void bottle(String letter, BottleRole role, BathKind bath) {
    database.change(
        session ->
            new Bottles(session)
                .add(
                    BottleLabel.of(
                            letter,
                            bath == BathKind.DEVELOPER ? "soup" : "bath " + letter,
                            role,
                            bath,
                            Volume.ofLitres(20))
                        .with(AfterPouring.REUSED),
                    Volume.ofLitres(20),
                    FIRST));
  }

  /** Opens the run of a fresh roll in that tank. */
  long opened(String tank, String mark) {
    rolls++;
    String number = "W-" + rolls;
    long load =
        database.inTransaction(
            session -> {
              Roll roll =
                  new Roll(
                      number,
                      RollLine.parse("135 36 some film @400 " + mark).withNumber(number),
                      Optional.empty(),
                      clock.instant(),
                      RollState.LOADED,
                      Optional.empty());
              new Rolls(session).add(roll);
              new RollSearch(session).describe(roll);
              return new Loads(session).add(load(tank, number)).id();
            });
    return new StartRun(() -> database, clock, bench).of(load).card().id();
  }

  private Load load(String tank, String number) {
    return new Load(
        0,
        LoadState.PLANNED,
        clock.instant(),
        List.of(new Load.Place(number, Optional.empty(), Optional.empty())),
        tank,
        "small-tank",
        new Recipe("soup", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
        new ChosenTime(Duration.ofMinutes(9), Standing.MEASURED, "own", Optional.empty()),
        Volume.ofMillilitres(300),
        Map.of(BathKind.DEVELOPER, "D", BathKind.FIXER, "F"),
        Optional.empty(),
        "");
  }

  /** What would be asked now before the next pour in that tank. */
  BeforePour before(String tank) {
    return bench.look(opened(tank, "")).before();
  }

  /** So many evenings from ticking to hanging, a day apart. */
  void clean(String tank, int evenings) {
    for (int i = 0; i < evenings; i++) {
      long run = opened(tank, "");
      send(run, new Happening.Started(TICKS, false));
      hang(run);
    }
  }

  /** Passes until the film hangs, and then a day. */
  void hang(long run) {
    clock.pass(Duration.between(clock.instant(), bench.look(run).endsAt()).plusSeconds(5));
    clock.passUnwatched(Duration.ofDays(1));
  }

  Answer send(long run, Happening what) {
    sent++;
    return bench.take(
        run,
        new SentEvent("winter-event-" + sent, Optional.of(0), what, clock.instant(), "laptop", ""));
  }

  @Override
  public void close() {
    bench.close();
    database.close();
  }
}
