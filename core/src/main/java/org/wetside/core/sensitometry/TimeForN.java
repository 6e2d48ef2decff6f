package org.wetside.core.sensitometry;

import java.util.Optional;

/**
 * The development for one contrast of subject.
 *
 * @param n −2 to +2
 * @param gradient that it wants [-]
 * @param time development time with its band; empty when the family does not reach the gradient
 */
public record TimeForN(int n, double gradient, Optional<ContrastTime> time) {}
