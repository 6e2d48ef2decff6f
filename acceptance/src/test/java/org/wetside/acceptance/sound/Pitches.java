package org.wetside.acceptance.sound;

import java.util.Arrays;

/**
 * Which of the pitches of the acts sounds, every 2.5 ms. A pitch counts when almost all of the
 * sound around that moment is that pitch, and it is as loud as an act: speech and ticks are not.
 */
final class Pitches {
  static final int STEP_SAMPLES_PER_SECOND = 400;

  private static final int[] KNOWN = {392, 587, 880};
  private static final double LEAST_AMPLITUDE = 0.09;
  private static final double LEAST_SHARE = 0.88;

  private Pitches() {}

  /** One number for each step, Hz; 0 where none of them sounds. */
  static int[] of(short[] samples, int rate) {
    int step = rate / STEP_SAMPLES_PER_SECOND;
    int half = rate / 100;
    int[] pitches = new int[samples.length / step];
    for (int i = 0; i < pitches.length; i++) {
      int from = Math.max(0, i * step - half);
      int to = Math.min(samples.length, i * step + half);
      pitches[i] = pitch(Arrays.copyOfRange(samples, from, to), rate);
    }
    return pitches;
  }

  private static int pitch(short[] window, int rate) {
    double energy = 0;
    for (short one : window) {
      energy += (double) one * one;
    }
    energy /= 32_767.0 * 32_767.0 * window.length;
    if (energy < LEAST_AMPLITUDE * LEAST_AMPLITUDE / 2) {
      return 0;
    }
    for (int hertz : KNOWN) {
      double amplitude = goertzel(window, hertz, rate);
      boolean pure = amplitude * amplitude / 2 > LEAST_SHARE * energy;
      if (pure && amplitude > LEAST_AMPLITUDE) {
        return hertz;
      }
    }
    return 0;
  }

  /** Amplitude of one pitch, of full scale. */
  private static double goertzel(short[] window, int hertz, int rate) {
    double turn = 2 * Math.cos(2 * Math.PI * hertz / rate);
    double last = 0;
    double before = 0;
    for (short one : window) {
      double now = one / 32_767.0 + turn * last - before;
      before = last;
      last = now;
    }
    double power = last * last + before * before - turn * last * before;
    return 2 * Math.sqrt(Math.max(0, power)) / window.length;
  }
}
