/**
 * What light and development do to film: characteristic curves, speed, contrast, contrast against
 * time, and instruments that read density.
 *
 * <p>Enters: step readings as {@link org.wetside.core.sensitometry.CurveReadings}, points of
 * contrast against time, steps of a tablet on a scanner. Leaves: results with their bands, or the
 * reason why one is not determinable; nothing is read beyond the readings. Open {@link
 * org.wetside.core.sensitometry.CharacteristicCurve} first.
 */
@NullMarked
package org.wetside.core.sensitometry;

import org.jspecify.annotations.NullMarked;
