package org.wetside.app.sound;

import java.util.List;
import org.wetside.core.process.Tone;

/**
 * One thing to be heard: a tone and, after it, words. All moments are in milliseconds on the clock
 * of the score.
 *
 * @param at when the tone begins
 * @param tone notes one after another
 * @param loudness of the notes, of full scale
 * @param clips names of the spoken clips, one after another; empty for none
 * @param wordsAt when the first clip begins
 * @param endsAt when it has fallen silent; words that would last longer are cut off
 */
public record Sounding(
    long at, Tone tone, double loudness, List<String> clips, long wordsAt, long endsAt) {
  /** A tick: a soft tone without words. */
  static Sounding tick(long at, Tone tone, double loudness) {
    return new Sounding(at, tone, loudness, List.of(), at, at + tone.milliseconds());
  }
}
