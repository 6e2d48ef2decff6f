package org.wetside.core.instrument;

/** What an instrument makes of a patch: a density, or the means of its channels. */
public sealed interface Seen permits SeenDensity, Means {}
