package org.wetside.core.thermal;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Standing;

/**
 * How fast a developer works at another temperature than the one its time is for: r(T) = exp(β(T −
 * Tref)), known inside a span of temperatures only.
 *
 * @param betaPerKelvin β, above 0
 * @param reference Tref, at which the rate is 1
 * @param span where β holds
 * @param standing how β is known
 * @param source where it is from, in words
 */
public record DevelopmentRate(
    double betaPerKelvin,
    Temperature reference,
    TemperatureRange span,
    Standing standing,
    String source) {
  public DevelopmentRate {
    if (!(betaPerKelvin > 0) || betaPerKelvin > 1) {
      throw new BadValueException(
          "temperature slope of development", betaPerKelvin + " per K", "above 0, at most 1 per K");
    }
  }

  /** Development per second against that at the reference; inside the span. */
  double at(double celsius) {
    return Math.exp(betaPerKelvin * (celsius - reference.celsius()));
  }
}
