package org.wetside.app.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.plan.Tonight;
import org.wetside.app.times.OwnLine;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.thermal.ThermometerOffset;

/** What stands in the invented kitchen: tanks, thermometers, bottles, one leaflet. */
final class DemoThings {
  private static final double DOUBLE_HOLDS_ML = 650;
  private static final double SINGLE_HOLDS_ML = 320;
  private static final double REEL_ML = 300;

  private final Wetside wetside;
  private final LocalDate today;

  DemoThings(Wetside wetside, LocalDate today) {
    this.wetside = wetside;
    this.today = today;
  }

  void put() {
    tank("Double", 2, DOUBLE_HOLDS_ML);
    tank("Single", 1, SINGLE_HOLDS_ML);
    wetside.keepThermometers().add("glass rod");
    wetside
        .keepThermometers()
        .compared(
            "glass rod",
            new ThermometerOffset(
                TemperatureDifference.ofKelvins(-0.2),
                Temperature.ofCelsius(0),
                TemperatureDifference.ofKelvins(0.2),
                today.minusDays(40),
                "ice point"));
    wetside.keepThermometers().add("kitchen probe");
    bottle("D", "D-76", BottleRole.STOCK, BathKind.DEVELOPER, 2000, 1900, true);
    bottle("S", "stop bath", BottleRole.WORKING, BathKind.STOP_BATH, 1000, 1000, false);
    bottle("F", "fixer", BottleRole.WORKING, BathKind.FIXER, 1000, 1000, false);
    bottle("W", "wash aid", BottleRole.WORKING, BathKind.WASH_AID, 1000, 900, false);
    bottle("P", "wetting agent", BottleRole.WORKING, BathKind.FINAL_RINSE, 1000, 800, false);
    wetside
        .addTime()
        .add(
            new OwnLine(
                "Sluice Pan 125",
                "D-76",
                "1+1",
                "125",
                "20C",
                "9:30",
                "small",
                "",
                "",
                "an invented leaflet, for the demo only"));
    wetside
        .keepTonight()
        .say(
            new Tonight(
                Optional.of(Temperature.ofCelsius(15)),
                Optional.of(Temperature.ofCelsius(9)),
                Optional.of(Temperature.ofCelsius(90)),
                Optional.of(LocalTime.of(23, 30))));
  }

  private void tank(String name, int reels, double holds) {
    wetside
        .keepTanks()
        .add(
            new Tank(
                name,
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, reels, Volume.ofMillilitres(REEL_ML))),
                Volume.ofMillilitres(holds)));
  }

  private void bottle(
      String letter,
      String contents,
      BottleRole role,
      BathKind bath,
      double holds,
      double filled,
      boolean oneShot) {
    wetside
        .addBottle()
        .add(
            BottleLabel.of(letter, contents, role, bath, Volume.ofMillilitres(holds))
                .with(oneShot ? AfterPouring.ONE_SHOT : AfterPouring.REUSED)
                .withDays(Optional.of(today.minusDays(14)), Optional.of(today.minusDays(13))),
            Volume.ofMillilitres(filled));
  }
}
