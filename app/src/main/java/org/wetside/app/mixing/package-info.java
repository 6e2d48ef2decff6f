/**
 * Mixing and temperature as questions a person asks: how much of each, which waters, when.
 *
 * <p>Enters: dilution, volumes, waters at hand, readings. Leaves: records with the amounts, the
 * cautions that belong to them and the honest alternative. Open {@link org.wetside.app.mixing.Mix}
 * first.
 */
@NullMarked
package org.wetside.app.mixing;

import org.jspecify.annotations.NullMarked;
