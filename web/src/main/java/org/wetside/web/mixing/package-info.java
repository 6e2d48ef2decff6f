/**
 * Mixing and temperature over HTTP: {@code /api/mix}, {@code /api/temper}, {@code /api/drift}.
 *
 * <p>Enters: what was typed, as text. Leaves: view records that the command line prints too. Open
 * {@link org.wetside.web.mixing.MixingRoutes} first.
 */
@NullMarked
package org.wetside.web.mixing;

import org.jspecify.annotations.NullMarked;
