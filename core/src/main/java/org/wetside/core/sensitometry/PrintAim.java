package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;

/**
 * What negatives are made for, and the gradient a subject then wants: G = LER/(R − flare), R = 2.20
 * − 0.301·N (SE-S42, S55).
 *
 * @param logExposureRange LER, the range of log exposure that the paper or scan takes, log10
 * @param flare of camera and lens, log10: 0.40 is usual (SE-S55), 0 leaves it out
 * @param measure in which the gradients of the series are: average gradient or contrast index
 */
public record PrintAim(double logExposureRange, double flare, Measure measure) {
  /** Range of log luminance of a normal subject (SE-S42). */
  private static final double NORMAL_SUBJECT = 2.20;

  /** One stop. */
  private static final double PER_N = 0.301;

  private static final double LEAST_RANGE = 0.1;
  private static final double MOST_RANGE = 3;
  private static final double MOST_FLARE = 1;

  public PrintAim {
    if (!(logExposureRange >= LEAST_RANGE) || logExposureRange > MOST_RANGE) {
      throw new BadValueException(
          "log exposure range", String.valueOf(logExposureRange), "it must be from 0.1 to 3");
    }
    if (!(flare >= 0) || flare > MOST_FLARE) {
      throw new BadValueException("flare", String.valueOf(flare), "it must be from 0 to 1 (log10)");
    }
    if (measure != Measure.AVERAGE_GRADIENT && measure != Measure.CONTRAST_INDEX) {
      throw new BadValueException(
          "measure of the aim", measure.words(), "average gradient or contrast index");
    }
  }

  /**
   * The gradient for N + {@code n} [-].
   *
   * @param n stops that the subject is short of (above 0) or beyond (below 0) a normal one
   */
  public double gradient(int n) {
    return logExposureRange / (NORMAL_SUBJECT - PER_N * n - flare);
  }
}
