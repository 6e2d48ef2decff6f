package org.wetside.app.shelf;

import java.time.Clock;
import java.time.LocalDate;
import org.wetside.core.bath.BathTest;
import org.wetside.core.bath.Bottle;
import org.wetside.core.bath.BottleEntry;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/**
 * What is done to a bottle by hand. Every act is a line in its book; nothing is ever changed in
 * place. All refuse a letter that is not on the shelf.
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
    database.change(
        session -> {
          require(session, letter);
          new Bottles(session).open(letter, day, clock.instant());
        });
  }

  /**
   * Taken out by hand, for a mix or a test.
   *
   * @throws BadValueException when there is less in the bottle
   */
  public void take(String letter, Volume volume, String note) {
    database.change(
        session -> {
          Bottle bottle = require(session, letter);
          positive(volume);
          if (volume.compareTo(bottle.left()) > 0) {
            throw new BadValueException(
                "volume to take", volume.toString(), "there are only " + bottle.left());
          }
          enter(session, letter, BottleEntry.Kind.TAKEN, -volume.millilitres(), note);
        });
  }

  /**
   * Fresh solution or replenisher added.
   *
   * @throws BadValueException when the bottle would run over
   */
  public void topUp(String letter, Volume volume, String note) {
    database.change(
        session -> {
          Bottle bottle = require(session, letter);
          positive(volume);
          if (bottle.left().plus(volume).compareTo(bottle.label().full()) > 0) {
            throw new BadValueException(
                "volume to add",
                volume.toString(),
                "the bottle holds " + bottle.label().full() + " and has " + bottle.left());
          }
          enter(session, letter, BottleEntry.Kind.TOPPED_UP, volume.millilitres(), note);
        });
  }

  /**
   * The book put right after looking.
   *
   * @param left what is really in the bottle
   * @param reason at least one word
   */
  public void correct(String letter, Volume left, String reason) {
    if (reason.isBlank()) {
      throw new BadValueException("reason of the correction", reason, "say it in a word or two");
    }
    database.change(
        session -> {
          Bottle bottle = require(session, letter);
          if (left.compareTo(bottle.label().full()) > 0) {
            throw new BadValueException(
                "volume in the bottle", left.toString(), "it holds " + bottle.label().full());
          }
          enter(
              session,
              letter,
              BottleEntry.Kind.CORRECTED,
              left.millilitres() - bottle.left().millilitres(),
              reason);
        });
  }

  /** Tried out now, and what it showed; the note may say how long it took. */
  public void tested(String letter, BathTest test, boolean passed, String note) {
    database.change(
        session -> {
          require(session, letter);
          enter(session, letter, BottleEntry.Kind.ofTest(test, passed), 0, note);
        });
  }

  /** Off the shelf; the note says where it went. */
  public void discard(String letter, String note) {
    database.change(
        session -> {
          Bottle bottle = require(session, letter);
          enter(session, letter, BottleEntry.Kind.DISCARDED, -bottle.left().millilitres(), note);
        });
  }

  private void enter(
      Session session, String letter, BottleEntry.Kind kind, double change, String note) {
    new Bottles(session)
        .enter(
            letter,
            new BottleEntry(kind, change, UnitOfUse.NONE, "", clock.instant(), note.strip()));
  }

  private static Bottle require(Session session, String letter) {
    return new Bottles(session)
        .find(letter)
        .orElseThrow(
            () -> new BadValueException("bottle", letter, "no bottle of that letter is there"));
  }

  private static void positive(Volume volume) {
    if (volume.millilitres() <= 0) {
      throw new BadValueException("volume", volume.toString(), "it must be above 0 mL");
    }
  }
}
