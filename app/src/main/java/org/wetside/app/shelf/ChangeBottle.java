package org.wetside.app.shelf;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.LedgerRules;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/**
 * What is done to a bottle by hand. Every act is a line in its ledger; nothing is ever changed in
 * place. All refuse a letter that never was there, and a bottle that was discarded, with its day.
 */
public final class ChangeBottle {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public ChangeBottle(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Opened for the first time, that day. */
  public void open(String letter, LocalDate day) {
    enter(letter, "", new BottleEvent.Opened(day));
  }

  /**
   * Taken out by hand, for a mix or a test.
   *
   * @throws BadValueException when there is less in the bottle
   */
  public void take(String letter, Volume volume, String note) {
    enter(letter, note, new BottleEvent.Taken(volume));
  }

  /**
   * Poured back by hand.
   *
   * @throws BadValueException when the bottle would run over
   */
  public void pourBack(String letter, Volume volume, String note) {
    enter(letter, note, new BottleEvent.PouredBack(volume));
  }

  /**
   * Fresh solution or replenisher added.
   *
   * @throws BadValueException when the bottle would run over
   */
  public void topUp(String letter, Volume volume, String note) {
    topUp(letter, Volume.ZERO, volume, note);
  }

  /**
   * Used solution taken out and fresh solution or replenisher added.
   *
   * @throws BadValueException when there is less in the bottle, or it would run over
   */
  public void topUp(String letter, Volume out, Volume added, String note) {
    enter(letter, note, new BottleEvent.ToppedUp(out, added));
  }

  /**
   * The ledger put right after looking.
   *
   * @param left what is really in the bottle
   * @param reason at least one word
   */
  public void correct(String letter, Volume left, String reason) {
    enter(letter, reason, new BottleEvent.Corrected(left));
  }

  /** Tried out now and judged by eye; the note may say how long it took. */
  public void tested(String letter, BathTest test, boolean passed, String note) {
    enter(letter, note, new BottleEvent.Tested(test, passed, Optional.empty()));
  }

  /**
   * What mishaps wrote on it is answered: it may be used.
   *
   * @param note what was decided, at least one word
   * @throws BadValueException when nothing is to be decided, or nothing was said
   */
  public void decide(String letter, String note) {
    database.change(
        session -> {
          Set<BottleMark> open = EnumSet.noneOf(BottleMark.class);
          new Bottles(session)
              .find(letter)
              .ifPresent(bottle -> bottle.state().marks().forEach(seen -> open.add(seen.mark())));
          if (open.isEmpty()) {
            throw new BadValueException("bottle", letter, "nothing is to be decided about it");
          }
          open.forEach(
              mark -> enter(session, letter, note, new BottleEvent.MarkLifted(mark), clock));
        });
  }

  /** Off the shelf; the note says where it went. */
  public void discard(String letter, String note) {
    enter(letter, note, new BottleEvent.Discarded());
  }

  private void enter(String letter, String note, BottleEvent what) {
    database.change(session -> enter(session, letter, note, what, clock));
  }

  /** The same inside a transaction that does more. */
  public static void enter(
      Session session, String letter, String note, BottleEvent what, Clock clock) {
    Bottles bottles = new Bottles(session);
    Bottle bottle =
        bottles
            .find(letter)
            .or(() -> bottles.findLast(letter))
            .orElseThrow(
                () -> new BadValueException("bottle", letter, "no bottle of that letter is there"));
    Instant now = clock.instant();
    LedgerLine line = LedgerLine.byHand(now, note, what);
    LedgerRules.require(bottle, line, Today.at(now));
    bottles.enter(letter, line);
  }
}
