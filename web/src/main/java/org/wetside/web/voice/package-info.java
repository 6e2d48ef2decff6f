/**
 * What a screen needs to be heard: the spoken clips, where each lies, and the tones that belong to
 * no cue. Enters: the files of {@code reference}. Leaves: one sound file and one JSON text. Open
 * {@link org.wetside.web.voice.VoiceRoutes} first.
 */
@NullMarked
package org.wetside.web.voice;

import org.jspecify.annotations.NullMarked;
