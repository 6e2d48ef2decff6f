/**
 * Measured film as questions a person asks: what speed and contrast do these readings show, and how
 * long for the contrast wanted.
 *
 * <p>Enters: tables of readings as text, or already read. Leaves: the curve with its results, or
 * the time with its band. Open {@link org.wetside.app.curves.ReadCurve} first.
 */
@NullMarked
package org.wetside.app.curves;

import org.jspecify.annotations.NullMarked;
