/**
 * Processes and their cues.
 *
 * <p>Enters: a process by its short name or as it is typed, a load, a development time. Leaves: the
 * processes there are, own ones kept or everything that stands in the way, the cues along a
 * timeline. Open {@link org.wetside.app.process.KeepProcess} first.
 */
@NullMarked
package org.wetside.app.process;

import org.jspecify.annotations.NullMarked;
