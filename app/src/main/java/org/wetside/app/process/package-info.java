/**
 * Processes and their cues.
 *
 * <p>Enters: a process by its short name, a development time. Leaves: the cues along its timeline.
 * Open {@link org.wetside.app.process.ShowCues} first.
 */
@NullMarked
package org.wetside.app.process;

import org.jspecify.annotations.NullMarked;
