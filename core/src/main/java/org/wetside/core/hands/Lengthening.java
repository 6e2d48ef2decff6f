package org.wetside.core.hands;

import java.time.Duration;

/**
 * A step shall last longer.
 *
 * @param step its index
 * @param by how much longer, above zero
 */
public record Lengthening(int step, Duration by) {}
