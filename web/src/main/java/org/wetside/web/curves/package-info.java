/**
 * Curves over HTTP: {@code /api/curve} and {@code /api/contrast}.
 *
 * <p>Enters: readings as CSV, the rest as text. Leaves: view records that the command line prints
 * too. Open {@link org.wetside.web.curves.CurveRoutes} first.
 */
@NullMarked
package org.wetside.web.curves;

import org.jspecify.annotations.NullMarked;
