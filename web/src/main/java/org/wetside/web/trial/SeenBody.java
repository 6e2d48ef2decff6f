package org.wetside.web.trial;

import org.jspecify.annotations.Nullable;

/**
 * What was seen in a test that runs.
 *
 * @param test its number
 * @param seen good, bad or unsure
 * @param note why nothing can be said, or what else was seen
 */
public record SeenBody(@Nullable Long test, @Nullable String seen, @Nullable String note) {}
