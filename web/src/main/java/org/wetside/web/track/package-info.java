/**
 * The cue track over HTTP: a run or a plan as one audio file, of which a player may ask for any
 * part. Enters: a run or a question for cues. Leaves: Ogg Opus or WAV. Open {@link
 * org.wetside.web.track.TrackRoutes} first.
 */
@NullMarked
package org.wetside.web.track;

import org.jspecify.annotations.NullMarked;
