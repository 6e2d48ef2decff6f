package org.wetside.benchmark;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SentEvent;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;

/**
 * Lives through many evenings with one tank, by the use cases that a person uses, and stops in the
 * middle of the developer of the last run.
 */
final class ManyEvenings {
  private static final Instant FIRST = Instant.parse("2020-01-06T19:00:00Z");
  private static final Duration BETWEEN = Duration.ofDays(2);
  private static final Duration FAR_BEYOND_THE_END = Duration.ofHours(3);
  private static final Duration INTO_THE_DEVELOPER = Duration.ofMinutes(4);
  private static final List<String> CHECKED =
      ClosingItem.usual(Vessel.SMALL_TANK).stream().map(ClosingItem::id).toList();
  private static final String TANK = "Single";
  private static final int TANK_ML = 450;
  private static final int REEL_ML = 300;

  private final Wetside wetside;
  private final HeldClock clock;
  private int sent;

  private ManyEvenings(Wetside wetside, HeldClock clock) {
    this.wetside = wetside;
    this.clock = clock;
  }

  /**
   * Fills an empty home with so many finished runs and one that goes on.
   *
   * @return the moment at which it stopped
   */
  static Instant liveThrough(int finished, Path home) {
    HeldClock clock = new HeldClock(FIRST);
    try (Wetside wetside = Wetside.open(home, clock)) {
      wetside.benchWith(clock);
      ManyEvenings evenings = new ManyEvenings(wetside, clock);
      evenings.buyTank();
      for (int evening = 1; evening <= finished; evening++) {
        clock.moveTo(FIRST.plus(BETWEEN.multipliedBy(evening)));
        long run = evenings.begin(evening);
        clock.moveTo(clock.instant().plus(FAR_BEYOND_THE_END));
        wetside.bench().look(run);
      }
      clock.moveTo(FIRST.plus(BETWEEN.multipliedBy(finished + 1L)));
      evenings.begin(finished + 1);
      return clock.instant().plus(INTO_THE_DEVELOPER);
    }
  }

  private void buyTank() {
    wetside
        .keepTanks()
        .add(
            new Tank(
                TANK,
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 1, Volume.ofMillilitres(REEL_ML))),
                Volume.ofMillilitres(TANK_ML)));
    wetside.keepThermometers().add("glass rod");
  }

  /** A roll, its load, its run, the first pour, the tank full and a reading after two minutes. */
  private long begin(int evening) {
    String roll = "B-" + evening;
    wetside.addRolls().lines(roll + " 135 36 TRI-X 400 @400").orRefuse();
    long run = wetside.startRun().of(load(roll).id()).card().id();
    send(run, new Happening.Started(CHECKED, false));
    clock.moveTo(clock.instant().plusSeconds(10));
    send(run, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false));
    clock.moveTo(clock.instant().plusSeconds(110));
    Temperature raw = Temperature.ofCelsius(19.8);
    send(run, new Happening.ReadingTaken("glass rod", raw, raw, false));
    return run;
  }

  private Load load(String roll) {
    return wetside
        .makeLoad()
        .make(
            new LoadWish(
                List.of(roll),
                TANK,
                "small-tank",
                new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                ""));
  }

  private void send(long run, Happening what) {
    sent++;
    SentEvent event =
        new SentEvent(
            "evening-event-" + sent, Optional.of(0), what, clock.instant(), "laptop", "Space");
    wetside.bench().take(run, event);
  }
}
