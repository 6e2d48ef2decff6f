/**
 * The place Times: ask for a development time, see how it came about, keep times of one's own.
 *
 * <p>Enters: a question or lines as typed. Leaves: the page, the JSON that the command line prints
 * too, and the file in which times are exchanged. Open {@link org.wetside.web.times.TimeView}
 * first.
 */
@NullMarked
package org.wetside.web.times;

import org.jspecify.annotations.NullMarked;
