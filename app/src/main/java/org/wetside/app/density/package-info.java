/**
 * Instruments that read density, their calibrations, and patches read from pictures.
 *
 * <p>Enters: step tablets with densities of their own, what an instrument made of them, pictures
 * and rectangles. Leaves: calibrations with residuals and drift, and densities with their limits.
 * Open {@link org.wetside.app.density.Densitometry} first.
 */
@NullMarked
package org.wetside.app.density;

import org.jspecify.annotations.NullMarked;
