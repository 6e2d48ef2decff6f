package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;

/**
 * One reading of contrast against time.
 *
 * @param seconds development time, above 0
 * @param contrast contrast index, average gradient or gamma [-]
 * @param sd standard deviation of the contrast [-]
 */
public record ContrastPoint(double seconds, double contrast, double sd) {
  public ContrastPoint {
    if (!(seconds > 0) || !Double.isFinite(seconds)) {
      throw new BadValueException("development time", seconds + " s", "it must be more than 0 s");
    }
    if (!(contrast > 0) || !Double.isFinite(contrast)) {
      throw new BadValueException("contrast", String.valueOf(contrast), "it must be more than 0");
    }
    if (!(sd >= 0) || !Double.isFinite(sd)) {
      throw new BadValueException(
          "uncertainty of contrast", String.valueOf(sd), "it must be at least 0");
    }
  }
}
