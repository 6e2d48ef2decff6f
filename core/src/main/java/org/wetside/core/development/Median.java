package org.wetside.core.development;

import java.util.List;

/** The middle value; of an even number the mean of the two in the middle. */
final class Median {
  private Median() {}

  static double of(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
