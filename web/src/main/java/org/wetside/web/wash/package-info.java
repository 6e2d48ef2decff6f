/**
 * Washing and drying on a page and over HTTP: {@code /shelf/wash}, {@code /api/wash}, {@code
 * /api/washes}, {@code /api/drying}.
 *
 * <p>Enters: what was typed, as text. Leaves: view records that the command line prints too. Open
 * {@link org.wetside.web.wash.WashRoutes} first.
 */
@NullMarked
package org.wetside.web.wash;

import org.jspecify.annotations.NullMarked;
