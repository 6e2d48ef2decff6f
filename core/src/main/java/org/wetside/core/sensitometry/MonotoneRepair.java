package org.wetside.core.sensitometry;

/**
 * Makes values that should never fall do so with the least change: least squares under that
 * condition, by pooling adjacent violators.
 */
final class MonotoneRepair {
  private MonotoneRepair() {}

  /** The repaired values; the weights are above 0. */
  static double[] of(double[] values, double[] weights) {
    int n = values.length;
    double[] value = new double[n];
    double[] weight = new double[n];
    int[] length = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      value[blocks] = values[i];
      weight[blocks] = weights[i];
      length[blocks] = 1;
      blocks++;
      while (blocks > 1 && value[blocks - 2] > value[blocks - 1]) {
        double total = weight[blocks - 2] + weight[blocks - 1];
        value[blocks - 2] =
            (value[blocks - 2] * weight[blocks - 2] + value[blocks - 1] * weight[blocks - 1])
                / total;
        weight[blocks - 2] = total;
        length[blocks - 2] += length[blocks - 1];
        blocks--;
      }
    }
    double[] out = new double[n];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < length[block]; i++) {
        out[at++] = value[block];
      }
    }
    return out;
  }
}
