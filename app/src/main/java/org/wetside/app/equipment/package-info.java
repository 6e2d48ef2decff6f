/**
 * Tanks and thermometers, kept true.
 *
 * <p>Enters: what a tank takes, what a thermometer showed against the truth. Leaves: tanks and
 * corrected readings. Open {@link org.wetside.app.equipment.KeepTanks} first.
 */
@NullMarked
package org.wetside.app.equipment;

import org.jspecify.annotations.NullMarked;
