package org.wetside.core.sensitometry;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One result read off a curve.
 *
 * @param measure what it is
 * @param value the result in the unit of its measure; empty when not determinable
 * @param band of 90 %; empty when not determinable
 * @param remark why the value or the band is not determinable; empty when both are
 */
public record CurveResult(
    Measure measure, OptionalDouble value, Optional<Interval> band, String remark) {}
