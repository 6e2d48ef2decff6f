package org.wetside.core.shelf;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/** Ledgers of invented events in any order, also such as no person could enter. */
final class RandomLedger {
  static final Instant BEGIN = Instant.parse("2026-01-10T18:00:00Z");

  private final SplittableRandom random;
  private final List<LedgerLine> lines = new ArrayList<>();
  private final List<BottleEvent.Used> open = new ArrayList<>();
  private int rolls;

  RandomLedger(long seed) {
    random = new SplittableRandom(seed);
  }

  List<LedgerLine> of(int length) {
    add("", new BottleEvent.Filled(volume(1000)));
    while (lines.size() < length) {
      next();
    }
    return lines;
  }

  private void next() {
    switch (random.nextInt(12)) {
      case 0 -> add("", new BottleEvent.Taken(volume(400)));
      case 1 -> add("", new BottleEvent.ToppedUp(volume(200), volume(300)));
      case 2 -> add("", new BottleEvent.Corrected(volume(1000)));
      case 3 -> test();
      case 4 -> add("", new BottleEvent.PouredBack(volume(300)));
      case 5 -> undo();
      case 6 -> refix();
      case 7 -> rare();
      default -> use();
    }
  }

  private void use() {
    List<FilmUse> film = new ArrayList<>();
    for (int i = random.nextInt(1, 4); i > 0; i--) {
      film.add(
          new FilmUse(
              "R-" + ++rolls,
              "an invented film",
              UnitOfUse.ofRolls(random.nextInt(1, 9) / 4.0),
              random.nextBoolean()));
    }
    BottleEvent.Used used = new BottleEvent.Used(volume(500), film);
    open.add(used);
    add("run-" + open.size(), used);
  }

  private void undo() {
    if (!open.isEmpty() && open.get(open.size() - 1).film().size() > 0) {
      BottleEvent.Used last = open.get(open.size() - 1);
      String run = "run-" + open.size();
      add(run, new BottleEvent.UseUndone(last.volume(), last.film()));
      open.set(open.size() - 1, new BottleEvent.Used(last.volume(), List.of()));
    }
  }

  private void test() {
    BathTest test = List.of(BathTest.values()).get(random.nextInt(3));
    Optional<Clearing> clearing =
        test == BathTest.CLIP && random.nextBoolean()
            ? Optional.of(
                new Clearing(
                    Duration.ofSeconds(random.nextInt(20, 120)),
                    "clip",
                    "1+4",
                    Temperature.ofCelsius(20),
                    random.nextInt(4) == 0))
            : Optional.empty();
    add("", new BottleEvent.Tested(test, random.nextInt(3) > 0, clearing));
  }

  private void refix() {
    if (rolls > 0) {
      add("", new BottleEvent.Refixed(List.of("R-" + random.nextInt(1, rolls + 1))));
    }
  }

  private void rare() {
    add(
        "",
        switch (random.nextInt(5)) {
          case 0 -> new BottleEvent.Opened(LocalDate.of(2026, 1, 10));
          case 1 -> new BottleEvent.MovedDown();
          case 2 -> new BottleEvent.Marked(mark());
          case 3 -> new BottleEvent.MarkLifted(mark());
          default -> new BottleEvent.Discarded();
        });
  }

  private BottleMark mark() {
    return random.nextBoolean() ? BottleMark.DO_NOT_USE : BottleMark.TEST_FIRST;
  }

  private Volume volume(int most) {
    return Volume.ofMillilitres(random.nextInt(0, most));
  }

  private void add(String run, BottleEvent what) {
    lines.add(new LedgerLine(BEGIN.plusSeconds(60L * lines.size()), run, "", what));
  }
}
