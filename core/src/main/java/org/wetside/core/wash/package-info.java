/**
 * Washing fixer out of film: what is left after so many changes of water, or so many minutes of
 * running water, by a model of two liquids, and beside it the simple rules that are quoted for it.
 *
 * <p>Enters: the film and what it carries over, the strength of the fixer, the water and the times
 * ({@link org.wetside.core.wash.WashQuestion}). Leaves: strengths after each change and residues on
 * the film for each half-time on file ({@link org.wetside.core.wash.WashForecast}); every residue
 * is a lower bound. Open {@link org.wetside.core.wash.TwoLiquids} first.
 */
@NullMarked
package org.wetside.core.wash;

import org.jspecify.annotations.NullMarked;
