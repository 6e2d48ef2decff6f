/**
 * The drawer and the evening: rolls, tanks, loads, and which rolls may share a tank.
 *
 * <p>Enters: rolls as typed, tanks as owned, a development time for each roll. Leaves: a {@link
 * org.wetside.core.plan.Load} that can be run, or the reasons why rolls may not share. Open {@link
 * org.wetside.core.plan.Roll} first, then {@link org.wetside.core.plan.Sharing}.
 */
@NullMarked
package org.wetside.core.plan;

import org.jspecify.annotations.NullMarked;
