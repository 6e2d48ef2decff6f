package org.wetside.web.wash;

import org.jspecify.annotations.Nullable;
import org.wetside.app.wash.WashWish;

/**
 * What the ways to wash are compared for, as it was typed; null or blank is not said.
 *
 * @param volume water that fills the tank once, for example {@code 500mL}
 * @param start strength of thiosulfate in the fixer, for example {@code 60g/L}
 * @param carryOver what comes along with the film, for example {@code 10mL}
 * @param rolls of film in the tank; 1 when it is not said
 * @param temp temperature of the wash water; 20 °C when it is not said
 */
public record WashesQuery(
    @Nullable String volume,
    @Nullable String start,
    @Nullable String carryOver,
    @Nullable String rolls,
    @Nullable String temp) {

  /** Understood. */
  public WashWish wish() {
    return new WashQuery(null, volume, null, null, null, null, start, carryOver, rolls, temp)
        .wish();
  }
}
