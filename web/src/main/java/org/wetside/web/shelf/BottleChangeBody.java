package org.wetside.web.shelf;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.trial.Trial;
import org.wetside.web.page.FieldReader;

/**
 * What is done to a bottle: exactly one of the volumes, the day or the test, and a note.
 *
 * @param takeMl taken out
 * @param topUpMl fresh solution or replenisher added
 * @param correctToMl what is really in it, after looking; the note says why
 * @param openedOn day it was opened, year-month-day
 * @param outMl used solution taken out before topUpMl was added
 * @param pourBackMl poured back by hand
 * @param test leader, clip or iodide: it was tried out now
 * @param passed whether the test was passed; needed with a test
 * @param clearingSeconds how long a clip took to clear, with a clip test
 * @param film film of the clip
 * @param dilution how the fixer was made
 * @param temperatureC of the fixer
 * @param baseline whether the solution was fresh
 * @param note in words; goes into its book
 */
public record BottleChangeBody(
    @Nullable Double takeMl,
    @Nullable Double topUpMl,
    @Nullable Double outMl,
    @Nullable Double pourBackMl,
    @Nullable Double correctToMl,
    @Nullable String openedOn,
    @Nullable String test,
    @Nullable Boolean passed,
    @Nullable Double clearingSeconds,
    @Nullable String film,
    @Nullable String dilution,
    @Nullable Double temperatureC,
    @Nullable Boolean baseline,
    @Nullable String note) {

  /**
   * Does it.
   *
   * @throws BadValueException when it says nothing or several things, or the bottle refuses
   */
  public void to(Wetside wetside, String letter) {
    ChangeBottle bottles = wetside.changeBottle();
    if (count(takeMl)
            + count(topUpMl)
            + count(pourBackMl)
            + count(correctToMl)
            + count(openedOn)
            + count(test)
        != 1) {
      throw new BadValueException(
          "change of a bottle",
          "none or several",
          "give exactly one of takeMl, topUpMl, pourBackMl, correctToMl, openedOn or test");
    }
    String said = note == null ? "" : note;
    if (takeMl != null) {
      bottles.take(letter, Volume.ofMillilitres(takeMl), said);
    } else if (topUpMl != null) {
      bottles.topUp(
          letter,
          Volume.ofMillilitres(outMl == null ? 0 : outMl),
          Volume.ofMillilitres(topUpMl),
          said);
    } else if (pourBackMl != null) {
      bottles.pourBack(letter, Volume.ofMillilitres(pourBackMl), said);
    } else if (correctToMl != null) {
      bottles.correct(letter, Volume.ofMillilitres(correctToMl), said);
    } else if (openedOn != null) {
      bottles.open(letter, FieldReader.day(openedOn));
    } else if (test != null) {
      if (passed == null) {
        throw new BadValueException("result of the test", "", "say passed: true or false");
      }
      BathTest which = BathTest.parse(test);
      if (clearingSeconds != null && which == BathTest.CLIP) {
        Trial unused =
            wetside.bathTests().judgeTest().clip(letter, passed, clearing(clearingSeconds), said);
      } else {
        bottles.tested(letter, which, passed, said);
      }
    }
  }

  private Clearing clearing(double seconds) {
    if (temperatureC == null) {
      throw new BadValueException("temperature of the fixer", "", "say temperatureC with the time");
    }
    return new Clearing(
        Duration.ofMillis(Math.round(seconds * 1000)),
        film == null ? "" : film,
        dilution == null ? "" : dilution,
        Temperature.ofCelsius(temperatureC),
        Boolean.TRUE.equals(baseline));
  }

  private static int count(@Nullable Object said) {
    return said == null ? 0 : 1;
  }
}
