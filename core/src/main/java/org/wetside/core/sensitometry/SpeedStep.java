package org.wetside.core.sensitometry;

/**
 * One standard speed and the exposures at the speed point that round to it.
 *
 * @param iso arithmetic speed, for example 400
 * @param degrees logarithmic speed, for example 27
 * @param fromLogHm least log10 Hm, rounded to two decimals, that counts as this speed
 * @param toLogHm greatest
 */
public record SpeedStep(double iso, int degrees, double fromLogHm, double toLogHm) {}
