package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;

/**
 * One step of a tablet as an instrument sees it.
 *
 * @param pixel mean value over the step in a linear 16-bit picture, above 0, at most 65535
 * @param density of the step, as its tablet says
 */
public record TabletPatch(double pixel, OpticalDensity density) {
  /** The largest value of 16 bits: light beyond it is cut off. */
  public static final double FULL = 65535;

  public TabletPatch {
    if (!(pixel > 0) || pixel > FULL) {
      throw new BadValueException(
          "pixel value", String.valueOf(pixel), "a linear 16-bit mean lies above 0, up to 65535");
    }
  }

  /** From the two numbers, as they stand in a table. */
  public static TabletPatch of(double pixel, double density) {
    return new TabletPatch(pixel, OpticalDensity.of(density));
  }
}
