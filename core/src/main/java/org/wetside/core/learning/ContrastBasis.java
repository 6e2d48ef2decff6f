package org.wetside.core.learning;

import org.wetside.core.quantity.BadValueException;

/**
 * What a contrast that was measured is held against: the film's series of contrast against time.
 *
 * @param series where it stands, for people
 * @param expected contrast at the maker's time [-]
 * @param slope d ln(contrast) / d ln(time) there [-]
 */
public record ContrastBasis(String series, double expected, double slope) {
  /** Both must be above 0. */
  public ContrastBasis {
    if (!(expected > 0) || !(slope > 0)) {
      throw new BadValueException(
          "contrast series", expected + ", slope " + slope, "both must be above 0");
    }
  }
}
