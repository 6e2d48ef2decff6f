package org.wetside.core.sensitometry;

/**
 * A step that lies off the smooth curve: to be read again.
 *
 * @param log10LuxSeconds log exposure of the step
 * @param read density as it was read [-]
 * @param expected density of the secondary fit there [-]
 */
public record Outlier(double log10LuxSeconds, double read, double expected) {}
