/**
 * Tanks, thermometers and waters, kept true.
 *
 * <p>Enters: what a tank takes, what a thermometer showed against the truth, what each water
 * usually has. Leaves: tanks, waters and corrected readings. Open {@link
 * org.wetside.app.equipment.KeepTanks} first.
 */
@NullMarked
package org.wetside.app.equipment;

import org.jspecify.annotations.NullMarked;
