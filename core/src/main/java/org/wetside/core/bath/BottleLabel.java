package org.wetside.core.bath;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * What stands on a bottle.
 *
 * @param letter the bottle's own, one to three letters or digits; unique among those on the shelf
 * @param contents name of what is in it, for example {@code D-76}
 * @param strength concentrate, stock or working
 * @param bath what it does to film
 * @param full how much it holds when full, above 0
 * @param oneShot whether what is taken out is thrown away after use; otherwise it goes back
 * @param mixedOn the day it was mixed, if it was
 * @param openedOn the day it was first opened, if it was
 * @param note anything else; may be empty
 */
public record BottleLabel(
    String letter,
    String contents,
    Strength strength,
    BathKind bath,
    Volume full,
    boolean oneShot,
    Optional<LocalDate> mixedOn,
    Optional<LocalDate> openedOn,
    String note) {

  public BottleLabel {
    letter = letter.strip().toUpperCase(Locale.ROOT);
    contents = contents.strip();
    note = note.strip();
    if (!letter.matches("[\\p{L}\\p{N}]{1,3}")) {
      throw new BadValueException("letter of the bottle", letter, "one to three letters or digits");
    }
    if (contents.isEmpty() || contents.length() > 60) {
      throw new BadValueException("contents of the bottle", contents, "1 to 60 characters");
    }
    if (full.millilitres() <= 0) {
      throw new BadValueException("volume of the bottle", full.toString(), "it must be above 0 mL");
    }
  }

  /** The same bottle opened that day. */
  public BottleLabel withOpenedOn(LocalDate day) {
    return new BottleLabel(
        letter, contents, strength, bath, full, oneShot, mixedOn, Optional.of(day), note);
  }

  /** For example {@code bottle A, D-76 stock}. */
  public String spoken() {
    return "bottle " + letter + ", " + contents + " " + strength.word();
  }
}
