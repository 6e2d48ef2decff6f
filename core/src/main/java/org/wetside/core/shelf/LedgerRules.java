package org.wetside.core.shelf;

import java.time.LocalDate;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * What may be entered in a ledger by hand. A run is never refused: what happened in a tank has
 * happened.
 */
public final class LedgerRules {
  private LedgerRules() {}

  /**
   * Refuses a line that cannot be true.
   *
   * @param now the moment, which no line may be after
   * @throws BadValueException with the reason: a discarded bottle, a moment to come, a volume that
   *     does not fit
   */
  public static void require(Bottle bottle, LedgerLine line, HereNow now) {
    BottleEvent what = line.what();
    if (bottle.discarded() && !(what instanceof BottleEvent.Refixed)) {
      throw new BadValueException(
          "bottle",
          bottle.label().letter(),
          "it was discarded on " + now.day(bottle.lastTouched()) + "; take another bottle");
    }
    if (line.at().isAfter(now.moment())) {
      throw new BadValueException("moment", line.at().toString(), "it is still to come");
    }
    if (what instanceof BottleEvent.Taken taken) {
      requireSome("volume to take", taken.volume());
      requireThere("volume to take", taken.volume(), bottle);
    } else if (what instanceof BottleEvent.ToppedUp topped) {
      requireThere("volume to take out", topped.out(), bottle);
      requireSome("volume to add", topped.added());
      requireRoom(topped.added(), bottle.left().minus(topped.out()), bottle);
    } else if (what instanceof BottleEvent.PouredBack back) {
      requireSome("volume to pour back", back.volume());
      requireRoom(back.volume(), bottle.left(), bottle);
    } else if (what instanceof BottleEvent.Corrected corrected) {
      requireHeld(corrected.left(), bottle.label());
      if (line.note().isBlank()) {
        throw new BadValueException(
            "reason of the correction", line.note(), "say it in a word or two");
      }
    } else if (what instanceof BottleEvent.MarkLifted lifted) {
      requireMark(lifted.mark(), bottle);
      if (line.note().isBlank()) {
        throw new BadValueException(
            "reason of the decision", line.note(), "say it in a word or two");
      }
    } else if (what instanceof BottleEvent.Opened opened) {
      requirePast("day of opening", Optional.of(opened.day()), now.today());
    }
  }

  /**
   * Refuses a new bottle that cannot be.
   *
   * @param filled how much is in it
   * @param today the day it is where the person is
   * @throws BadValueException with the reason
   */
  public static void requireNew(BottleLabel label, Volume filled, LocalDate today) {
    requireHeld(filled, label);
    requirePast("day of mixing", label.mixedOn(), today);
    requirePast("day of opening", label.openedOn(), today);
  }

  private static void requireMark(BottleMark mark, Bottle bottle) {
    if (!bottle.state().marked(mark)) {
      throw new BadValueException(
          "bottle", bottle.label().letter(), "\"" + mark.word() + "\" does not stand in its book");
    }
  }

  private static void requireHeld(Volume volume, BottleLabel label) {
    if (volume.compareTo(label.full()) > 0) {
      throw new BadValueException(
          "volume in the bottle", volume.toString(), "the bottle holds " + label.full());
    }
  }

  private static void requirePast(String thing, Optional<LocalDate> day, LocalDate today) {
    if (day.filter(said -> said.isAfter(today)).isPresent()) {
      throw new BadValueException(thing, day.get().toString(), "it is still to come");
    }
  }

  private static void requireSome(String thing, Volume volume) {
    if (volume.millilitres() <= 0) {
      throw new BadValueException(thing, volume.toString(), "it must be above 0 mL");
    }
  }

  private static void requireThere(String thing, Volume volume, Bottle bottle) {
    if (volume.compareTo(bottle.left()) > 0) {
      throw new BadValueException(thing, volume.toString(), "there are only " + bottle.left());
    }
  }

  private static void requireRoom(Volume added, Volume before, Bottle bottle) {
    if (before.plus(added).compareTo(bottle.label().full()) > 0) {
      throw new BadValueException(
          "volume to add",
          added.toString(),
          "the bottle holds " + bottle.label().full() + " and has " + before);
    }
  }
}
