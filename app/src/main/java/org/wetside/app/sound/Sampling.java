package org.wetside.app.sound;

/** How the track is sampled: one channel, 16 bit, a whole number of samples in a millisecond. */
public final class Sampling {
  /** Samples in a second; speech and all tones lie below half of it. */
  public static final int RATE = 16_000;

  /** Samples in a millisecond, so that every cue begins exactly on a sample. */
  public static final int PER_MILLISECOND = RATE / 1000;

  /** Full scale of a sample. */
  static final int FULL = 32_767;

  private Sampling() {}

  /** Samples in that time. */
  static long samples(long milliseconds) {
    return milliseconds * PER_MILLISECOND;
  }
}
