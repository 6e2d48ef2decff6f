package org.wetside.app.sound;

import java.util.List;

/**
 * The sound of a run, from one moment to its end: any part of it can be asked for, and nothing of
 * it is held. Two tracks are equal when they sound the same.
 *
 * @param soundings in order
 * @param from moment at which the track begins, ms on the clock of the score
 * @param milliseconds how long it is
 */
public record CueTrack(List<Sounding> soundings, long from, long milliseconds) {
  private static final long FADE_OUT = 1000;

  public CueTrack {
    soundings = List.copyOf(soundings);
  }

  /** From that moment to a second after the last of the soundings. */
  static CueTrack of(List<Sounding> soundings, long from) {
    long end = soundings.stream().mapToLong(Sounding::endsAt).max().orElse(from);
    return new CueTrack(soundings, from, end - from + FADE_OUT);
  }

  /** How many samples it has. */
  public long samples() {
    return Sampling.samples(milliseconds);
  }

  /** Whether nothing sounds in that part. */
  boolean isSilent(long first, int count) {
    long origin = Sampling.samples(from) + first;
    return soundings.stream().noneMatch(one -> touches(one, origin, count));
  }

  /** The samples of one part of it, from its first sample on. */
  public short[] read(long first, int count) {
    Voice voice = Voice.english();
    float[] block = new float[count];
    long origin = Sampling.samples(from) + first;
    for (Sounding one : soundings) {
      if (touches(one, origin, count)) {
        Tones.add(one.tone(), one.loudness(), Sampling.samples(one.at()) - origin, block);
        voice.add(one, origin, block);
      }
    }
    short[] samples = new short[count];
    for (int i = 0; i < count; i++) {
      samples[i] = (short) Math.round(Math.max(-1, Math.min(1, block[i])) * Sampling.FULL);
    }
    return samples;
  }

  private static boolean touches(Sounding one, long origin, int count) {
    return Sampling.samples(one.at()) < origin + count && Sampling.samples(one.endsAt()) > origin;
  }
}
