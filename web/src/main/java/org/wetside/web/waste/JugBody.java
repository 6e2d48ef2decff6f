package org.wetside.web.waste;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.waste.Jug;
import org.wetside.core.waste.WasteKind;

/**
 * A jug as it is described.
 *
 * @param jug name written on it
 * @param kind silver-bearing, developer, stop or other
 * @param holdsMl how much it takes
 */
public record JugBody(@Nullable String jug, @Nullable String kind, @Nullable Double holdsMl) {
  /**
   * The jug.
   *
   * @throws BadValueException naming the part and its limit
   */
  public Jug described() {
    if (holdsMl == null) {
      throw new BadValueException("volume of the jug", "nothing", "say how much it holds");
    }
    return new Jug(
        jug == null ? "" : jug,
        WasteKind.fromWord(kind == null ? "" : kind),
        Volume.ofMillilitres(holdsMl));
  }
}
