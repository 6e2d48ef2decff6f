/**
 * What a load needs of its baths: how much film counts as one unit of use, how a working solution
 * is made up, whether there is enough stock in it, and how much to fill in.
 *
 * <p>Enters: volumes, dilutions, films and a maker's minimum with its citation. Leaves: volumes and
 * outcomes that say enough, short or not known. Open {@link org.wetside.core.bath.StockRequirement}
 * first.
 */
@NullMarked
package org.wetside.core.bath;

import org.jspecify.annotations.NullMarked;
