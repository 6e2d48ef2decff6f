package org.wetside.web.shelf;

import java.util.Locale;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;

/**
 * A bottle as it is drawn: a tall one for a litre and more, a short one below; the hatched level is
 * how full it is.
 *
 * @param outline path of the glass
 * @param capY upper edge of the cap
 * @param levelX left edge of the liquid
 * @param levelWidth its width
 * @param levelY its surface
 * @param levelHeight its height
 * @param plateY upper edge of the plate with the letter
 * @param letterY base line of the letter
 */
public record BottleDrawing(
    String outline,
    String capY,
    String levelX,
    String levelWidth,
    String levelY,
    String levelHeight,
    String plateY,
    String letterY) {
  private static final Volume TALL_FROM = Volume.ofMillilitres(750);
  private static final double FLOOR = 196;
  private static final double TALL_LIQUID = 128;
  private static final double SHORT_LIQUID = 82;

  private static final String TALL =
      "M39 20V36Q39 46 22 54Q14 59 14 70V196H90V70Q90 59 82 54Q65 46 65 36V20Z";
  private static final String SHORT =
      "M39 66V82Q39 92 29 100Q21 105 21 116V196H83V116Q83 105 75 100Q65 92 65 82V66Z";

  /** The drawing of a bottle. */
  public static BottleDrawing of(Bottle bottle) {
    boolean tall = bottle.label().full().compareTo(TALL_FROM) >= 0;
    double height = (tall ? TALL_LIQUID : SHORT_LIQUID) * bottle.fullness();
    return new BottleDrawing(
        tall ? TALL : SHORT,
        tall ? "8" : "54",
        tall ? "14" : "21",
        tall ? "76" : "62",
        number(FLOOR - height),
        number(height),
        tall ? "112" : "138",
        tall ? "148" : "174");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
