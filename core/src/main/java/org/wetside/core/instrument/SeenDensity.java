package org.wetside.core.instrument;

import org.wetside.core.quantity.OpticalDensity;

/**
 * A density as a densitometer shows it.
 *
 * @param density as shown
 */
public record SeenDensity(OpticalDensity density) implements Seen {}
