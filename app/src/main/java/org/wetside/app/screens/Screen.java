package org.wetside.app.screens;

import java.time.Instant;

/**
 * A screen that was let in.
 *
 * @param id its number, never given again
 * @param name what its owner calls it
 * @param pairedAt when it was let in
 * @param seenAt when it last asked for something, to the minute
 */
public record Screen(long id, String name, Instant pairedAt, Instant seenAt) {}
