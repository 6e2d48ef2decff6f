package org.wetside.web.process;

import org.jspecify.annotations.Nullable;

/**
 * What a copy is to be called.
 *
 * @param process short name of the copy
 * @param name as people call it; null to make it from the short name
 */
public record CopyBody(@Nullable String process, @Nullable String name) {}
