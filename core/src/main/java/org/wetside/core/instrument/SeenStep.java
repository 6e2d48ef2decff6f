package org.wetside.core.instrument;

import org.wetside.core.quantity.OpticalDensity;

/**
 * What an instrument made of one step of a tablet.
 *
 * @param label the step
 * @param density as its tablet said at that time
 * @param seen what the instrument made of it
 */
public record SeenStep(String label, OpticalDensity density, Seen seen) {}
