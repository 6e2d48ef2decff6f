/**
 * Washing and drying as questions a person asks: what is left after this wash, which way to wash
 * takes how much water and time, when the film may be touched.
 *
 * <p>Enters: fills or running water, the film, the fixer. Leaves: forecasts of the residue, each a
 * lower bound, with litres and minutes. Open {@link org.wetside.app.wash.ForeseeWash} first.
 */
@NullMarked
package org.wetside.app.wash;

import org.jspecify.annotations.NullMarked;
