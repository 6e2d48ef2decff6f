package org.wetside.web.shelf;

import org.jspecify.annotations.Nullable;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.web.page.FieldReader;

/**
 * What is done to a bottle: exactly one of the volumes, the day or the test, and a note.
 *
 * @param takeMl taken out
 * @param topUpMl fresh solution or replenisher added
 * @param correctToMl what is really in it, after looking; the note says why
 * @param openedOn day it was opened, year-month-day
 * @param test leader or clip: it was tried out now
 * @param passed whether the test was passed; needed with a test
 * @param note in words; goes into its book
 */
public record BottleChangeBody(
    @Nullable Double takeMl,
    @Nullable Double topUpMl,
    @Nullable Double correctToMl,
    @Nullable String openedOn,
    @Nullable String test,
    @Nullable Boolean passed,
    @Nullable String note) {

  /**
   * Does it.
   *
   * @throws BadValueException when it says nothing or several things, or the bottle refuses
   */
  public void to(ChangeBottle bottles, String letter) {
    if (count(takeMl) + count(topUpMl) + count(correctToMl) + count(openedOn) + count(test) != 1) {
      throw new BadValueException(
          "change of a bottle",
          "none or several",
          "give exactly one of takeMl, topUpMl, correctToMl, openedOn or test");
    }
    String said = note == null ? "" : note;
    if (takeMl != null) {
      bottles.take(letter, Volume.ofMillilitres(takeMl), said);
    } else if (topUpMl != null) {
      bottles.topUp(letter, Volume.ofMillilitres(topUpMl), said);
    } else if (correctToMl != null) {
      bottles.correct(letter, Volume.ofMillilitres(correctToMl), said);
    } else if (openedOn != null) {
      bottles.open(letter, FieldReader.day(openedOn));
    } else if (test != null) {
      if (passed == null) {
        throw new BadValueException("result of the test", "", "say passed: true or false");
      }
      bottles.tested(letter, BathTest.parse(test), passed, said);
    }
  }

  private static int count(@Nullable Object said) {
    return said == null ? 0 : 1;
  }
}
