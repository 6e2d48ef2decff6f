package org.wetside.app.sound;

import java.lang.ref.SoftReference;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.reference.SpokenWords;
import org.wetside.reference.VoiceClips;

/** The spoken clips of a language as samples. */
final class Voice {
  private static @Nullable SoftReference<Voice> english;

  private final VoiceClips clips;
  private final short[] recording;

  private Voice(VoiceClips clips) {
    this.clips = clips;
    recording = OpusFile.decode(clips.sound());
  }

  /** Decoded when first asked for, and given up when memory is short. */
  static synchronized Voice english() {
    Voice known = english == null ? null : english.get();
    if (known == null) {
      known = new Voice(VoiceClips.in(SpokenWords.ENGLISH));
      english = new SoftReference<>(known);
    }
    return known;
  }

  /**
   * Where a clip lies in the recording.
   *
   * @param from in samples
   * @param milliseconds how long it is; 0 for a clip that was never spoken
   */
  record Clip(int from, long milliseconds) {}

  /** That clip; nothing of a clip that was never spoken, as on the page. */
  Clip clip(String name) {
    Optional<VoiceClips.Place> place = clips.find(name);
    return place
        .map(
            one -> new Clip((int) Sampling.samples(one.from().toMillis()), one.length().toMillis()))
        .orElseGet(() -> new Clip(0, 0));
  }

  /**
   * Adds the words of a sounding that fall into a block.
   *
   * @param origin the moment at the beginning of the block, in samples of the score's clock
   */
  void add(Sounding sounding, long origin, float[] block) {
    long at = Sampling.samples(sounding.wordsAt()) - origin;
    long until = Sampling.samples(sounding.endsAt()) - origin;
    for (String name : sounding.clips()) {
      Clip clip = clip(name);
      long length = Sampling.samples(clip.milliseconds());
      int last = (int) Math.min(block.length, Math.min(until, at + length));
      for (int i = (int) Math.max(0, Math.min(at, block.length)); i < last; i++) {
        int sample = clip.from() + (int) (i - at);
        block[i] += sample < recording.length ? recording[sample] / (float) Sampling.FULL : 0;
      }
      at += length;
    }
  }
}
