package org.wetside.core.strip;

import java.time.Instant;

/**
 * A strip that is on file.
 *
 * @param id its number
 * @param strip what was done and read
 * @param keptAt when it was written down
 */
public record KeptStrip(long id, FilmStrip strip, Instant keptAt) {}
