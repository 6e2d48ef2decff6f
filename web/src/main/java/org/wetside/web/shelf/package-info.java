/**
 * The Shelf: bottles drawn with hatch, letter and level, their books, and mixing from them.
 *
 * <p>Enters: forms and JSON. Leaves: the pages {@code /shelf}, {@code /shelf/new}, {@code
 * /shelf/mix}, {@code /shelf/fixers}, {@code /shelf/{letter}} with its care, and {@code
 * /api/bottles}. Open {@link org.wetside.web.shelf.ShelfRoutes} first.
 */
@NullMarked
package org.wetside.web.shelf;

import org.jspecify.annotations.NullMarked;
