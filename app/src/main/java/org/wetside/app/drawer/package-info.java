/**
 * The drawer: rolls put in, corrected, taken out, found, filed, and what was done to them.
 *
 * <p>Enters: rolls as typed. Leaves: rolls with numbers, or every line that is no roll with its
 * reason; the record of a developed roll. Open {@link org.wetside.app.drawer.AddRolls} first.
 */
@NullMarked
package org.wetside.app.drawer;

import org.jspecify.annotations.NullMarked;
