/**
 * The place Negatives: developed rolls, found by any word, each with everything that was done to
 * it.
 *
 * <p>Enters: the record of a roll. Leaves: the pages. Open {@link
 * org.wetside.web.negatives.NegativesRoutes} first.
 */
@NullMarked
package org.wetside.web.negatives;

import org.jspecify.annotations.NullMarked;
