/**
 * The evening: what there is tonight, and loads made by hand from rolls that may share a tank.
 *
 * <p>Enters: rolls by number, a tank, a developer. Leaves: a {@link
 * org.wetside.app.plan.PreparedLoad} that says how long, how much and what is in the way, and once
 * kept a load for the Bench. Open {@link org.wetside.app.plan.MakeLoad} first.
 */
@NullMarked
package org.wetside.app.plan;

import org.jspecify.annotations.NullMarked;
