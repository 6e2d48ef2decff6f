package org.wetside.core.trial;

import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * When a fixer is spent by its clearing time, and when two times may be compared.
 *
 * @param spentTimes spent when clearing takes that many times the baseline, above 1 [-]
 * @param citation where that was read
 * @param standing how it is known
 * @param within two times are compared when their temperatures differ by at most this
 */
public record ClearingLimits(
    double spentTimes, Citation citation, Standing standing, TemperatureDifference within) {}
