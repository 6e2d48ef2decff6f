/**
 * Mixing and temperature over HTTP: {@code /api/mix}, {@code /api/temper}, {@code /api/drift}, and
 * all baths of a load at once ({@code /loads/{load}/temper}).
 *
 * <p>Enters: what was typed, as text. Leaves: view records that the command line prints too. Open
 * {@link org.wetside.web.mixing.MixingRoutes} first.
 */
@NullMarked
package org.wetside.web.mixing;

import org.jspecify.annotations.NullMarked;
