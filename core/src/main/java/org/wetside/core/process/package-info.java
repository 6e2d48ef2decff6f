/**
 * Processes as data: steps, agitation, the timeline they make and the cues that are said along it.
 *
 * <p>Enters: an ordered list of steps, built in or edited. Leaves: a {@link
 * org.wetside.core.process.Timeline} of moments counted from the first pour, and the cues along it.
 * No clock is read here. Open {@link org.wetside.core.process.FilmProcess} first.
 */
@NullMarked
package org.wetside.core.process;

import org.jspecify.annotations.NullMarked;
