package org.wetside.acceptance.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SentEvent;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.source.Standing;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * A run that is ready at the Bench of a real server: two rolls, one of them precious, a tank, a
 * thermometer and three bottles. All of it is invented.
 */
final class ReadyRun implements AutoCloseable {
  final Wetside wetside;
  final WebServer server;
  final long run;

  ReadyRun(Path home) {
    this(home, "some film", "soup");
  }

  /** The same with another film and another developer. */
  ReadyRun(Path home, String film, String developer) {
    this(home, film, developer, "vinegar", "fix");
  }

  /** The same with other baths after it. */
  ReadyRun(Path home, String film, String developer, String stop, String fixer) {
    wetside = Wetside.open(home, Clock.systemUTC());
    server = WebServer.start(wetside, WebOptions.onPort(0));
    wetside
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
    wetside.keepThermometers().add("glass rod");
    bottle("D", developer, BottleRole.STOCK, BathKind.DEVELOPER, "");
    bottle("S", stop, BottleRole.WORKING, BathKind.STOP_BATH, "");
    bottle("F", fixer, BottleRole.WORKING, BathKind.FIXER, "test first");
    wetside
        .addRolls()
        .lines("A-1 135 36 %s @400 \"a gate\" precious\nA-2 135 36 %s @400".formatted(film, film))
        .orRefuse();
    long load =
        wetside
            .makeLoad()
            .make(
                new LoadWish(
                    List.of("A-1", "A-2"),
                    "Double",
                    "small-tank",
                    new Recipe(developer, Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                    Optional.of(
                        new ChosenTime(
                            Duration.ofMinutes(9), Standing.MEASURED, "own", Optional.empty())),
                    Optional.empty(),
                    Map.of(BathKind.DEVELOPER, "D", BathKind.STOP_BATH, "S", BathKind.FIXER, "F"),
                    Optional.empty(),
                    ""))
            .id();
    run = wetside.startRun().of(load).card().id();
  }

  private void bottle(String letter, String contents, BottleRole role, BathKind bath, String note) {
    wetside
        .addBottle()
        .add(
            BottleLabel.of(letter, contents, role, bath, Volume.ofLitres(1))
                .with(role == BottleRole.STOCK ? AfterPouring.ONE_SHOT : AfterPouring.REUSED)
                .withNote(note),
            Volume.ofLitres(1));
  }

  /** What hands report of a step, now. */
  void send(int step, Happening what) {
    wetside
        .bench()
        .take(
            run,
            new SentEvent(
                "sent-" + step + "-" + what.kind(),
                Optional.of(step),
                what,
                Instant.now(),
                "hand",
                step + what.kind().word()));
  }

  String address() {
    return server.address().resolve("/bench/" + run).toString();
  }

  @Override
  public void close() {
    server.close();
    wetside.close();
  }
}
