package org.wetside.acceptance.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * What a page was heard to play: the beginnings of its tones, on its audio clock and on its own.
 */
record Heard(List<Double> audioSeconds, List<List<Double>> clocks) {
  /** Pairs of both clocks within so many seconds of a moment count for it. */
  private static final double NEAR_SECONDS = 15;

  static Heard on(HiddenBrowser browser) {
    List<List<Double>> clocks = new ArrayList<>();
    ((List<?>) browser.ask("window.clocks")).forEach(pair -> clocks.add(numbers(pair)));
    return new Heard(numbers(browser.ask("window.heard")), clocks);
  }

  /** All of them on the page's clock (performance.now), in ms. */
  List<Double> onThePage() {
    return audioSeconds.stream().map(this::pageOf).toList();
  }

  /** A moment of the audio clock on the page's clock, by the pairs measured around it. */
  double pageOf(double audio) {
    double[] near =
        clocks.stream()
            .filter(pair -> Math.abs(pair.get(1) - audio) < NEAR_SECONDS)
            .mapToDouble(pair -> pair.get(0) - pair.get(1) * 1_000)
            .sorted()
            .toArray();
    return audio * 1_000 + near[near.length / 2];
  }

  static List<Double> numbers(Object list) {
    return ((List<?>) list).stream().map(one -> ((Number) one).doubleValue()).toList();
  }
}
