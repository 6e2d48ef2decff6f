package org.wetside.core.sensitometry;

/**
 * A step whose density was levelled out because densities must not fall.
 *
 * @param log10LuxSeconds log exposure of the step
 * @param read density as it was read (the mean of its readings) [-]
 * @param taken density the curve takes [-]
 */
public record MovedStep(double log10LuxSeconds, double read, double taken) {}
