package org.wetside.core.sensitometry;

import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;

/**
 * One density read on a step of known exposure.
 *
 * @param logExposure what fell on the step
 * @param density what was read there, gross or net
 */
public record StepReading(LogExposure logExposure, OpticalDensity density) {
  /** From the two numbers, as they stand in a table. */
  public static StepReading of(double log10LuxSeconds, double density) {
    return new StepReading(
        LogExposure.ofLog10LuxSeconds(log10LuxSeconds), OpticalDensity.of(density));
  }
}
