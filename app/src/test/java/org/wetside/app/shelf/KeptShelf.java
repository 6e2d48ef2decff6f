package org.wetside.app.shelf;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.store.BottlesInRun;
import org.wetside.store.Database;

/** A shelf in a real database, at one moment. */
final class KeptShelf implements AutoCloseable {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC);

  final Database database;

  KeptShelf(Path home) {
    database = Database.open(home.resolve("shelf.db"));
  }

  ListBottles list() {
    return new ListBottles(database);
  }

  /** Puts a full bottle there. */
  void bottle(String letter, String contents, BottleRole role, BathKind bath, double millilitres) {
    Volume full = Volume.ofMillilitres(millilitres);
    new AddBottle(database, CLOCK).add(BottleLabel.of(letter, contents, role, bath, full), full);
  }

  /** So many rolls of 80 in² go through it, and all of it comes back. */
  void film(String letter, int rolls) {
    List<FilmUse> film = new ArrayList<>();
    for (int roll = 1; roll <= rolls; roll++) {
      film.add(new FilmUse("R-" + roll, "some film", UnitOfUse.ofRolls(1), false));
    }
    database.change(
        session ->
            new BottlesInRun(session)
                .debit(letter, Volume.ZERO, film, "1", CLOCK.instant(), CLOCK.instant()));
  }

  @Override
  public void close() {
    database.close();
  }
}
