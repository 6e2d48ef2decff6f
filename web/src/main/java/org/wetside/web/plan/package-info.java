/**
 * The Plan: tonight, the loads in order, and what wants attention; and the pages of single loads.
 * In: rolls, tanks, bottles, runs. Out: pages and {@code /api/loads}. Open {@link
 * org.wetside.web.plan.PlanRoutes} first.
 */
@NullMarked
package org.wetside.web.plan;

import org.jspecify.annotations.NullMarked;
