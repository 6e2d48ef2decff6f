package org.wetside.core.sensitometry;

import java.time.Duration;

/**
 * Speed after one development time.
 *
 * @param time development time
 * @param fixedDensity 0.80/Hm
 * @param byDeltaX speed by ΔX
 */
public record SpeedAtTime(Duration time, CurveResult fixedDensity, CurveResult byDeltaX) {}
