package org.wetside.app.shelf;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.FixerPair;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.FixerPairs;
import org.wetside.store.Session;

/** Two fixers used one after the other, and what is done when the first is spent. */
public final class TurnFixers {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public TurnFixers(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** The pairs in use. */
  public List<FixerPair> all() {
    return database.read(session -> new FixerPairs(session).all());
  }

  /** The pair a bottle belongs to. */
  public Optional<FixerPair> of(String letter) {
    return database.read(session -> new FixerPairs(session).of(letter));
  }

  /**
   * Begins a pair.
   *
   * @throws BadValueException when one of them is no fixer ready to pour, or is in a pair already
   */
  public void pair(String first, String second) {
    database.change(
        session -> {
          if (first.strip().equalsIgnoreCase(second.strip())) {
            throw new BadValueException("second bottle", second, "it is the first one");
          }
          free(session, first);
          free(session, second);
          new FixerPairs(session)
              .add(new FixerPair(fixer(session, first), fixer(session, second), 0));
        });
  }

  /**
   * The first is spent: it is discarded, the second becomes the first, a fresh one comes second;
   * after the third time both are discarded.
   *
   * @param letter letter of either
   * @param fresh letter of the fresh one; empty when both are discarded
   * @param emptying where what is discarded goes, in the same transaction
   * @return what was done
   * @throws BadValueException when they are no pair, or the fresh one is needed and missing, or not
   *     fresh
   */
  public FixerPair.Turn turn(String letter, Optional<String> fresh, Emptying emptying) {
    return database.inTransaction(
        session -> {
          FixerPairs pairs = new FixerPairs(session);
          FixerPair pair =
              pairs
                  .of(letter)
                  .orElseThrow(
                      () -> new BadValueException("bottle", letter, "it is in no pair of fixers"));
          FixerPair.Turn turn = pair.next();
          if (turn instanceof FixerPair.MoveDown down) {
            // Asked while the pair still stands, or its second bottle could be its own successor.
            String next = fresh(session, fresh);
            pairs.end(pair);
            pairs.add(pair.movedDown(next));
            emptying.empty(session, down.discard(), "spent, first of two fixers");
            ChangeBottle.enter(session, down.movesDown(), "", new BottleEvent.MovedDown(), clock);
          } else {
            pairs.end(pair);
            emptying.empty(session, pair.first(), "first of two fixers, turned often enough");
            emptying.empty(session, pair.second(), "second of two fixers, turned often enough");
          }
          return turn;
        });
  }

  private static String fresh(Session session, Optional<String> letter) {
    String said =
        letter
            .filter(text -> !text.isBlank())
            .orElseThrow(
                () -> new BadValueException("fresh fixer", "", "say the letter of its bottle"));
    free(session, said);
    String found = fixer(session, said);
    Bottle bottle = new Bottles(session).find(found).orElseThrow();
    if (bottle.film().rolls() > 0) {
      throw new BadValueException("fresh fixer", said, "film has already gone through it");
    }
    return found;
  }

  private static void free(Session session, String letter) {
    if (new FixerPairs(session).of(letter).isPresent()) {
      throw new BadValueException("bottle", letter, "it is already one of a pair");
    }
  }

  private static String fixer(Session session, String letter) {
    Bottle bottle =
        new Bottles(session)
            .find(letter)
            .orElseThrow(
                () -> new BadValueException("bottle", letter, "none of that letter stands there"));
    if (!FilmUse.fixes(bottle.label().bath()) || bottle.label().role() != BottleRole.WORKING) {
      throw new BadValueException("bottle", letter, "it is no fixer of working strength");
    }
    return bottle.label().letter();
  }
}
