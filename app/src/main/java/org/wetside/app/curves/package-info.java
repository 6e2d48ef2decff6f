/**
 * Measured film as questions a person asks: what speed and contrast do these readings show, and how
 * long for the contrast wanted. Strips that were read are kept, and what they show together goes
 * into the times.
 *
 * <p>Enters: tables of readings as text, or already read. Leaves: the curve with its results, or
 * the time with its band. Open {@link org.wetside.app.curves.ReadCurve} first.
 */
@NullMarked
package org.wetside.app.curves;

import org.jspecify.annotations.NullMarked;
