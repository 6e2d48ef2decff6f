package org.wetside.core.sensitometry;

import java.util.OptionalDouble;

/**
 * Contrast that grows with time towards an end: g(t) = g∞(1 − exp(−k(t − t0))). The form is
 * recalled (SE-S30) and describes many developers and not all: published series defeat it.
 *
 * @param limit g∞, the contrast that is never reached [-]
 * @param ratePerMinute k
 * @param delayMinutes t0, when contrast begins
 */
public record Saturation(double limit, double ratePerMinute, double delayMinutes) {
  /** Contrast after so many minutes [-]. */
  public double at(double minutes) {
    return limit * -Math.expm1(-ratePerMinute * (minutes - delayMinutes));
  }

  /** Minutes to a contrast; empty when it is never reached. */
  public OptionalDouble minutesFor(double contrast) {
    if (!(contrast < limit)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(delayMinutes - Math.log1p(-contrast / limit) / ratePerMinute);
  }
}
