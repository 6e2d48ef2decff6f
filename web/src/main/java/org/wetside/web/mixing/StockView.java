package org.wetside.web.mixing;

import org.jspecify.annotations.Nullable;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/**
 * Stock in a fill against the maker's minimum.
 *
 * @param verdict {@code enough}, {@code too little} or {@code open: minimum not on file}
 * @param passed whether the check is passed; an open one is not
 * @param presentMl stock or concentrate in the fill
 * @param neededMl for this film; null when the minimum is unknown
 * @param perRollMl the minimum for one roll; null when it is unknown
 * @param standing how the minimum is known; null when it is unknown
 * @param source where the minimum stands; null when it is unknown
 * @param text the verdict in one sentence
 */
public record StockView(
    String verdict,
    boolean passed,
    double presentMl,
    @Nullable Double neededMl,
    @Nullable Double perRollMl,
    @Nullable String standing,
    @Nullable String source,
    String text) {

  /** The view of a check, its sentence in those units. */
  public static StockView of(StockRequirement check, Units units) {
    if (check instanceof StockRequirement.Enough enough) {
      return of(
          "enough",
          check,
          enough.needed(),
          enough.minimum(),
          "enough stock: "
              + units.words(enough.present())
              + " for a need of "
              + units.words(enough.needed()));
    }
    if (check instanceof StockRequirement.TooLittle little) {
      return of(
          "too little",
          check,
          little.needed(),
          little.minimum(),
          "too little stock: "
              + units.words(little.missing())
              + " missing of "
              + units.words(little.needed())
              + "; fill more, dilute less, or take fewer rolls");
    }
    return new StockView(
        "open: minimum not on file",
        false,
        check.present().millilitres(),
        null,
        null,
        null,
        null,
        "the maker's minimum of stock per roll is not on file: enter it from the leaflet");
  }

  private static StockView of(
      String verdict, StockRequirement check, Volume needed, StockMinimum minimum, String text) {
    return new StockView(
        verdict,
        check.passed(),
        check.present().millilitres(),
        needed.millilitres(),
        minimum.perRoll().millilitres(),
        minimum.standing().word(),
        minimum.citation().toString(),
        text);
  }
}
