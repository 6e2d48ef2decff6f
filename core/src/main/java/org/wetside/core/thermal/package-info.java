/**
 * Temperature of liquids: mixing waters to a temperature, drift towards the room, and what a
 * thermometer's reading is worth.
 *
 * <p>Enters: volumes, temperatures and timed readings. Leaves: volumes to pour ({@link
 * org.wetside.core.thermal.Tempering}), a drift ({@link org.wetside.core.thermal.Drift}) and
 * corrected readings ({@link org.wetside.core.thermal.Reading}). Open {@link
 * org.wetside.core.thermal.Tempering} first.
 */
@NullMarked
package org.wetside.core.thermal;

import org.jspecify.annotations.NullMarked;
