/**
 * Bottles: what stands on the shelf, and everything done to a bottle by hand.
 *
 * <p>Enters: labels, volumes, reasons. Leaves: bottles as their books tell them. Open {@link
 * org.wetside.app.shelf.ListBottles} first.
 */
@NullMarked
package org.wetside.app.shelf;

import org.jspecify.annotations.NullMarked;
