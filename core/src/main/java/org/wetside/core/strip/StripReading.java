package org.wetside.core.strip;

import org.wetside.core.quantity.OpticalDensity;

/**
 * One density as it was read.
 *
 * @param place on the scale of its strip: log10 lx·s, number of the step, or stops
 * @param density what was read there
 */
public record StripReading(double place, OpticalDensity density) {}
