package org.wetside.core.learning;

import java.time.Instant;

/**
 * An own index in use.
 *
 * @param of film and developer
 * @param index with the figures of the day it was accepted
 * @param at when that was
 */
public record AcceptedIndex(FilmInDeveloper of, OwnIndex index, Instant at) {}
