package org.wetside.app.shelf;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.LedgerRules;
import org.wetside.core.shelf.RecalledRoll;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Recalls;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/** The rolls that are to be fixed again, until they are. */
public final class ReadRecall {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public ReadRecall(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** All of them, the first fixed first. */
  public List<RecalledRoll> all() {
    return database.read(session -> new Recalls(session).all());
  }

  /** How many there are. */
  public int count() {
    return database.read(session -> new Recalls(session).count());
  }

  /**
   * A roll was fixed again.
   *
   * @param fixer letter of the bottle it was fixed in now, which then counts it; empty when it was
   *     none of the shelf
   * @param note in words; may be empty
   * @throws BadValueException when it is on no recall list, or the bottle does not fix, is
   *     discarded or itself failed its test
   */
  public void refixed(String roll, Optional<String> fixer, String note) {
    database.change(session -> refixed(session, roll, fixer, note));
  }

  private void refixed(Session session, String roll, Optional<String> fixer, String note) {
    List<RecalledRoll> marked = new Recalls(session).of(roll);
    if (marked.isEmpty()) {
      throw new BadValueException("roll", roll, "it is not to be fixed again");
    }
    Instant now = clock.instant();
    String number = marked.get(0).roll();
    Bottles bottles = new Bottles(session);
    String where = fixer.map(letter -> "in bottle " + letter + " ").orElse("") + note;
    fixer.ifPresent(letter -> count(session, letter, number, now));
    marked.stream()
        .limit(number.isEmpty() ? 1 : marked.size()) // without a number each is another roll
        .map(RecalledRoll::bottleId)
        .distinct()
        .forEach(
            bottle ->
                bottles.refixed(
                    bottle,
                    LedgerLine.byHand(now, where, new BottleEvent.Refixed(List.of(number)))));
  }

  private void count(Session session, String letter, String number, Instant now) {
    Bottles bottles = new Bottles(session);
    Bottle bottle =
        bottles
            .findLast(letter)
            .orElseThrow(
                () -> new BadValueException("bottle", letter, "no bottle of that letter is there"));
    if (!FilmUse.fixes(bottle.label().bath()) || bottle.state().fixFailed()) {
      throw new BadValueException(
          "bottle", letter, "it does not fix, or failed its test: take another");
    }
    FilmUse use =
        new Rolls(session)
            .find(number)
            .map(FilmGrain::use)
            .orElseThrow(() -> new BadValueException("roll", number, "it is not in the drawer"));
    LedgerLine line =
        LedgerLine.byHand(now, "fixed again", new BottleEvent.Used(Volume.ZERO, List.of(use)));
    LedgerRules.require(bottle, line, Today.at(now));
    bottles.enter(letter, line);
  }

  /**
   * Says whose a roll is.
   *
   * @param owner may be empty
   * @throws BadValueException when there is no such roll
   */
  public void setOwner(String roll, String owner) {
    database.change(
        session -> {
          Optional<Roll> found = new Rolls(session).find(roll);
          if (found.isEmpty()) {
            throw new BadValueException("roll", roll, "there is no roll of that number");
          }
          Roll known = found.get();
          Roll owned =
              new Roll(
                  known.number(),
                  known.described().withOwner(owner),
                  known.filmCode(),
                  known.addedAt(),
                  known.state(),
                  known.processedAt());
          new Rolls(session).change(known.number(), owned);
          new RollSearch(session).describe(owned);
        });
  }
}
