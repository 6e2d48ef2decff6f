/**
 * Instruments that read density, and how far each can be trusted.
 *
 * <p>Enters: a step tablet with densities of its own, what an instrument makes of each step,
 * patches measured in a picture. Leaves: densities with their limits, residuals, and how far two
 * calibrations of one instrument lie apart. Open {@link org.wetside.core.instrument.Calibration}
 * first.
 */
@NullMarked
package org.wetside.core.instrument;

import org.jspecify.annotations.NullMarked;
