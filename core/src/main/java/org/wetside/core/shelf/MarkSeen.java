package org.wetside.core.shelf;

import java.time.Instant;

/**
 * A mark that is still to be answered.
 *
 * @param at when it was made
 * @param run the run whose mishap made it
 * @param why in a few words
 * @param mark which one
 */
public record MarkSeen(Instant at, String run, String why, BottleMark mark) {}
