package org.wetside.web.density;

import org.jspecify.annotations.Nullable;

/**
 * One step of a tablet.
 *
 * @param step its label
 * @param density as measured for this tablet, dimensionless
 */
public record StepBody(@Nullable String step, double density) {}
