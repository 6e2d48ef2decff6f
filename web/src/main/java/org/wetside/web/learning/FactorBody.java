package org.wetside.web.learning;

import org.jspecify.annotations.Nullable;

/**
 * Which factor or index to use.
 *
 * @param film name or code of the film
 * @param developer name of the developer
 */
public record FactorBody(@Nullable String film, @Nullable String developer) {}
