package org.wetside.app.picture;

import org.wetside.core.instrument.PatchMeasure;

/** Sums of 16-bit samples; whole numbers, so that nothing is lost however many there are. */
final class Tally {
  private static final int FULL = 65535;

  private long count;
  private long sum;
  private long squares;
  private long atZero;
  private long atFull;

  void add(int[] samples) {
    for (int sample : samples) {
      sum += sample;
      squares += (long) sample * sample;
      atZero += sample == 0 ? 1 : 0;
      atFull += sample == FULL ? 1 : 0;
    }
    count += samples.length;
  }

  PatchMeasure.Channel channel(String name) {
    double mean = (double) sum / count;
    double variance = count > 1 ? (squares - mean * sum) / (count - 1) : 0;
    return new PatchMeasure.Channel(name, mean, Math.sqrt(Math.max(0, variance)), atZero, atFull);
  }
}
