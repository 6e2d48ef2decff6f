/**
 * The use cases over one home of data, behind one front door.
 *
 * <p>Enters: what a person asked or typed, in the types of {@code core}. Leaves: records and sealed
 * outcomes that pages, JSON and terminal words. Open {@link org.wetside.app.Wetside} first.
 *
 * <p>What could not be done (disk, lock, a newer database) leaves as a {@link
 * org.wetside.app.CannotDoException} whose message says what was kept and what to do; bad input as
 * a {@link org.wetside.core.quantity.BadValueException}.
 */
@NullMarked
package org.wetside.app;

import org.jspecify.annotations.NullMarked;
