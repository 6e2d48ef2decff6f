package org.wetside.web.testroll;

import org.jspecify.annotations.Nullable;

/**
 * That a step was done.
 *
 * @param note in any words, at most 400 characters; null for none
 */
public record TickBody(@Nullable String note) {}
