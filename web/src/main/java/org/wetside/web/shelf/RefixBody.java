package org.wetside.web.shelf;

import org.jspecify.annotations.Nullable;

/**
 * A roll was fixed again, or belongs to somebody.
 *
 * @param refixed whether it was fixed again
 * @param bottle letter of the fixer it was fixed in now, which then counts it
 * @param note in words
 * @param owner whose it is; unchanged when not said
 */
public record RefixBody(
    @Nullable Boolean refixed,
    @Nullable String bottle,
    @Nullable String note,
    @Nullable String owner) {}
