/**
 * Pieces of film that were exposed in steps, developed for a known time and read: what was done to
 * them, and the log exposure of every step.
 *
 * <p>Enters: densities read at places of a table, tablet or camera series. Leaves: readings by log
 * exposure for {@link org.wetside.core.sensitometry.CharacteristicCurve}. Open {@link
 * org.wetside.core.strip.FilmStrip} first.
 */
@NullMarked
package org.wetside.core.strip;

import org.jspecify.annotations.NullMarked;
