/**
 * Tanks, thermometers, waters, the balance and measures, kept true.
 *
 * <p>Enters: what a tank takes, what a thermometer showed against the truth, what each water
 * usually has, what a balance shows and a syringe holds. Leaves: tanks, waters, measures and
 * corrected readings. Open {@link org.wetside.app.equipment.KeepTanks} first.
 */
@NullMarked
package org.wetside.app.equipment;

import org.jspecify.annotations.NullMarked;
