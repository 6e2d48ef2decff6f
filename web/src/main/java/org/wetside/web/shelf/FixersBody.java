package org.wetside.web.shelf;

import org.jspecify.annotations.Nullable;

/**
 * Two fixers become a pair, or the first of a pair is spent.
 *
 * @param first letter of the first
 * @param second letter of the second, to make a pair
 * @param spent whether the first is spent: it is discarded, the second moves down
 * @param fresh letter of the fresh fixer that comes second then
 */
public record FixersBody(
    @Nullable String first,
    @Nullable String second,
    @Nullable Boolean spent,
    @Nullable String fresh) {}
