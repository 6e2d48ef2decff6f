package org.wetside.benchmark;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.home.Home;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.store.Bottles;
import org.wetside.store.Database;

/** An invented ledger of a fixer that never ends: runs, top-ups and timed clips. */
final class LongLedger {
  /** How many lines. */
  static final int LINES = 100_000;

  /** The letter of its bottle. */
  static final String LETTER = "F";

  private static final Instant BEGIN = Instant.parse("2020-01-01T18:00:00Z");
  private static final Volume FILL = Volume.ofMillilitres(300);

  private LongLedger() {}

  /**
   * Makes it in a folder.
   *
   * @param arguments the folder
   */
  public static void main(String[] arguments) {
    keepIn(Path.of(arguments[0]), LINES);
  }

  /** So many lines, the first filling among them but not listed. */
  static List<LedgerLine> lines(int count) {
    List<LedgerLine> lines = new ArrayList<>(count);
    for (int i = 1; i < count; i++) {
      String run = i % 4 < 2 ? Integer.toString(i / 4) : "";
      lines.add(new LedgerLine(BEGIN.plusSeconds(60L * i), run, "", event(i)));
    }
    return lines;
  }

  private static BottleEvent event(int i) {
    return switch (i % 4) {
      case 0 -> new BottleEvent.Used(FILL, List.of(roll(i)));
      case 1 -> new BottleEvent.PouredBack(Volume.ofMillilitres(290));
      case 2 -> new BottleEvent.ToppedUp(Volume.ZERO, Volume.ofMillilitres(10));
      default -> new BottleEvent.Tested(BathTest.CLIP, i % 40 != 3, Optional.of(clip(i)));
    };
  }

  private static FilmUse roll(int i) {
    return new FilmUse("L-" + i, "an invented film", UnitOfUse.ONE_ROLL, i % 8 == 0);
  }

  private static Clearing clip(int i) {
    return new Clearing(
        Duration.ofSeconds(40 + i % 30),
        "an invented film",
        "1+4",
        Temperature.ofCelsius(20),
        i == 3);
  }

  /** Keeps so many lines in a home, in one transaction. */
  static void keepIn(Path home, int count) {
    try (Database database = Database.open(new Home(home).database())) {
      database.change(
          session -> {
            Bottles bottles = new Bottles(session);
            BottleLabel label =
                BottleLabel.of(
                    LETTER, "fixer", BottleRole.WORKING, BathKind.FIXER, Volume.ofLitres(1));
            bottles.add(label, Volume.ofLitres(1), BEGIN);
            bottles.enterAll(LETTER, lines(count));
          });
    }
  }
}
