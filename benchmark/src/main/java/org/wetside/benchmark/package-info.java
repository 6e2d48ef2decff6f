/**
 * What must be fast, measured.
 *
 * <p>Enters: the real program, real requests, a home with a thousand stored runs. Leaves: times for
 * {@code docs/performance.md}. Open {@link org.wetside.benchmark.Warm} first; starting up is
 * measured by the script {@code benchmark/start-up} against {@link org.wetside.benchmark.peer}.
 */
@NullMarked
package org.wetside.benchmark;

import org.jspecify.annotations.NullMarked;
