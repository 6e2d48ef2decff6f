package org.wetside.core.sensitometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Readings by rising exposure, those of one exposure averaged. */
final class Steps {
  /** From this share of repeated steps on, the repetitions say how well a density was read. */
  private static final double OWN_SD_SHARE = 0.5;

  private final double[] logH;
  private final double[] density;
  private final double[] count;
  private final double ownSd;

  private Steps(double[] logH, double[] density, double[] count, double ownSd) {
    this.logH = logH;
    this.density = density;
    this.count = count;
    this.ownSd = ownSd;
  }

  static Steps of(List<StepReading> readings) {
    List<StepReading> sorted =
        readings.stream().sorted(Comparator.comparing(StepReading::logExposure)).toList();
    double[] logH = new double[sorted.size()];
    double[] density = new double[sorted.size()];
    double[] count = new double[sorted.size()];
    int steps = 0;
    int repeated = 0;
    double squares = 0;
    for (int i = 0; i < sorted.size(); ) {
      double here = sorted.get(i).logExposure().log10LuxSeconds();
      int end = i;
      double sum = 0;
      while (end < sorted.size() && sorted.get(end).logExposure().log10LuxSeconds() == here) {
        sum += sorted.get(end).density().value();
        end++;
      }
      double mean = sum / (end - i);
      for (int k = i; k < end; k++) {
        double off = sorted.get(k).density().value() - mean;
        squares += off * off;
      }
      repeated += end - i > 1 ? 1 : 0;
      logH[steps] = here;
      density[steps] = mean;
      count[steps] = end - i;
      steps++;
      i = end;
    }
    boolean own = repeated >= OWN_SD_SHARE * steps;
    double freedom = (double) sorted.size() - steps;
    return new Steps(
        Arrays.copyOf(logH, steps),
        Arrays.copyOf(density, steps),
        Arrays.copyOf(count, steps),
        own ? Math.sqrt(squares / freedom) : Double.NaN);
  }

  int size() {
    return logH.length;
  }

  double[] logH() {
    return logH;
  }

  double[] density() {
    return density;
  }

  /** How often each was read. */
  double[] count() {
    return count;
  }

  /** Standard deviation of one reading by the repetitions; NaN when too few steps have any. */
  double ownSd() {
    return ownSd;
  }

  /** Mean density from the first step to one before {@code end}. */
  static double mean(double[] density, int end) {
    double sum = 0;
    for (int i = 0; i < end; i++) {
      sum += density[i];
    }
    return sum / end;
  }
}
