package org.wetside.core.sensitometry;

/**
 * The band of a curve at one exposure.
 *
 * @param log10LuxSeconds log10 exposure, lx·s or relative
 * @param density band of 90 % of the density there [-]
 */
public record BandPoint(double log10LuxSeconds, Interval density) {}
