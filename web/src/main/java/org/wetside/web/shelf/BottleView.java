package org.wetside.web.shelf;

import org.jspecify.annotations.Nullable;
import org.wetside.core.bath.Bottle;

/**
 * A bottle as JSON.
 *
 * @param letter its own
 * @param contents name of what is in it
 * @param strength concentrate, stock or working
 * @param bath what it does to film
 * @param fullMl what it holds
 * @param leftMl what is in it, the sum of its book
 * @param oneShot whether what is taken out is thrown away after use
 * @param mixedOn day, or null
 * @param openedOn day, or null
 * @param note may be empty
 * @param filmRolls film that went through it, in rolls of 80 in²
 * @param lastTouchedAt moment of the last line of its book
 */
public record BottleView(
    String letter,
    String contents,
    String strength,
    String bath,
    double fullMl,
    double leftMl,
    boolean oneShot,
    @Nullable String mixedOn,
    @Nullable String openedOn,
    String note,
    double filmRolls,
    String lastTouchedAt) {

  /** The view of a bottle. */
  public static BottleView of(Bottle bottle) {
    return new BottleView(
        bottle.label().letter(),
        bottle.label().contents(),
        bottle.label().strength().word(),
        bottle.label().bath().word(),
        bottle.label().full().millilitres(),
        bottle.left().millilitres(),
        bottle.label().oneShot(),
        bottle.label().mixedOn().map(Object::toString).orElse(null),
        bottle.label().openedOn().map(Object::toString).orElse(null),
        bottle.label().note(),
        bottle.film().rolls(),
        bottle.lastTouched().toString());
  }
}
