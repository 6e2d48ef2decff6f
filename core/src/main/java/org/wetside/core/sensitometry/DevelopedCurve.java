package org.wetside.core.sensitometry;

import java.time.Duration;

/**
 * One curve of a family: the same film and exposures, developed for this time.
 *
 * @param time development time, above 0
 * @param results what was read off its curve
 */
public record DevelopedCurve(Duration time, CurveResults results) {}
