package org.wetside.core.bath;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * The least stock or concentrate that a maker asks for one unit of film.
 *
 * @param perRoll for 80 in², above 0
 * @param standing how it is known; the user's own entry from a leaflet is published
 * @param citation where it stands
 */
public record StockMinimum(Volume perRoll, Standing standing, Citation citation) {
  public StockMinimum {
    if (perRoll.millilitres() <= 0) {
      throw new BadValueException(
          "minimum of stock per roll", perRoll.toString(), "it must be above 0 mL");
    }
  }

  /** What that much film needs. */
  public Volume needFor(UnitOfUse film) {
    return perRoll.times(film.rolls());
  }
}
