package org.wetside.app.sound;

import java.lang.ref.SoftReference;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.wetside.reference.SpokenWords;
import org.wetside.reference.VoiceClips;

/** The spoken clips of a language as samples. */
final class Voice {
  private static @Nullable SoftReference<Voice> english;

  private final VoiceClips clips;
  private final OpusPackets recording;
  private final Map<String, short[]> decoded = new ConcurrentHashMap<>();

  private Voice(VoiceClips clips) {
    this.clips = clips;
    recording = OpusPackets.read(clips.sound());
  }

  /** Read when first asked for, and given up when memory is short. */
  static synchronized Voice english() {
    Voice known = english == null ? null : english.get();
    if (known == null) {
      known = new Voice(VoiceClips.in(SpokenWords.ENGLISH));
      english = new SoftReference<>(known);
    }
    return known;
  }

  /** How long a clip is, ms; 0 for one that was never spoken, as on the page. */
  long milliseconds(String clip) {
    return clips.find(clip).map(place -> place.length().toMillis()).orElse(0L);
  }

  /**
   * Adds the words of a sounding that fall into a block.
   *
   * @param origin the moment at the beginning of the block, in samples of the score's clock
   */
  void add(Sounding sounding, long origin, float[] block) {
    long at = Sampling.samples(sounding.wordsAt()) - origin;
    long until = Sampling.samples(sounding.endsAt()) - origin;
    for (String clip : sounding.clips()) {
      long length = Sampling.samples(milliseconds(clip));
      int first = (int) Math.max(0, Math.min(at, block.length));
      int last = (int) Math.min(block.length, Math.min(until, at + length));
      if (first < last) {
        short[] samples = decoded.computeIfAbsent(clip, this::decode);
        for (int i = first; i < last; i++) {
          block[i] += samples[(int) (i - at)] / (float) Sampling.FULL;
        }
      }
      at += length;
    }
  }

  private short[] decode(String clip) {
    VoiceClips.Place place = clips.find(clip).orElseThrow();
    int count = (int) Sampling.samples(place.length().toMillis());
    int from = (int) Sampling.samples(place.from().toMillis());
    return Arrays.copyOf(recording.decode(from, count), count);
  }
}
