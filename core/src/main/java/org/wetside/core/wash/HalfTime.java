package org.wetside.core.wash;

import java.time.Duration;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A half-time on file: how long film takes to give half of its fixer to clean water of ordinary
 * temperature.
 *
 * @param ordinary in water that is not cold, above 0
 * @param citation who prints it
 * @param standing how it is known
 */
public record HalfTime(Duration ordinary, Citation citation, Standing standing) {}
