/**
 * The book of waste: jugs, what is poured into them, when and to whom they are handed in. What must
 * not meet is refused before anything is written.
 *
 * <p>Enters: names, volumes, bottles of the shelf. Leaves: jugs as their book tells them. Open
 * {@link org.wetside.app.waste.PourWaste} first.
 */
@NullMarked
package org.wetside.app.waste;

import org.jspecify.annotations.NullMarked;
