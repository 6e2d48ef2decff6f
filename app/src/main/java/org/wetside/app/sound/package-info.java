/**
 * The cue track: a whole run as one audio file for any player. Enters: cues with their tones and
 * sayings, and the spoken clips of {@code reference}. Leaves: samples on demand, as WAV or as Ogg
 * Opus. Open {@link org.wetside.app.sound.MakeTrack} first.
 */
@NullMarked
package org.wetside.app.sound;

import org.jspecify.annotations.NullMarked;
