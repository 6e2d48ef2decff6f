package org.wetside.app.sound;

import org.wetside.core.process.Sounds;
import org.wetside.core.process.Tone;

/** Adds the notes of a tone to samples: triangle waves that come and go softly, as on the page. */
final class Tones {
  private static final int EDGE = Sounds.EDGE_MILLISECONDS * Sampling.PER_MILLISECOND;

  private Tones() {}

  /**
   * Adds what of a tone falls into a block.
   *
   * @param start of the tone, in samples from the beginning of the block; may be negative
   * @param loudness of full scale
   */
  static void add(Tone tone, double loudness, long start, float[] block) {
    long at = start;
    for (Tone.Note note : tone.notes()) {
      long length = Sampling.samples(note.milliseconds());
      if (note.hertz() > 0 && at < block.length && at + length > 0) {
        addNote(note.hertz(), length, loudness, at, block);
      }
      at += length;
    }
  }

  private static void addNote(int hertz, long length, double loudness, long at, float[] block) {
    int until = (int) Math.min(block.length, at + length);
    for (int i = (int) Math.max(0, at); i < until; i++) {
      long n = i - at;
      double edge = Math.min(1.0, Math.min(n, length - n) / (double) EDGE);
      block[i] += (float) (loudness * edge * triangle(hertz * (double) n / Sampling.RATE));
    }
  }

  /** From 0 up, by turns; ±1 at its corners. */
  private static double triangle(double turns) {
    double within = turns + 0.25 - Math.floor(turns + 0.25);
    return 1 - Math.abs(4 * within - 2);
  }
}
