package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;

/**
 * Light from the clear surround that reaches a dark patch all the same: T' = (T + f)/(1 + f).
 *
 * @param share f, flare as a share of the light of the surround [-], from 0 to below 1
 */
public record Flare(double share) {
  public Flare {
    if (!(share >= 0) || share >= 1) {
      throw new BadValueException("flare", String.valueOf(share), "it lies from 0 to below 1");
    }
  }

  /**
   * From one patch of known density within a clear surround.
   *
   * @param real its density [-]
   * @param seen what was read [-], not above the real one
   */
  public static Flare from(double real, double seen) {
    double passes = Math.pow(10, -real);
    double reaches = Math.pow(10, -seen);
    return new Flare((reaches - passes) / (1 - reaches));
  }

  /**
   * From a piece that lets no light through, within a clear surround: what is read there is flare
   * alone, T' = f/(1 + f).
   *
   * @param seen what was read [-], above 0, from the surround
   */
  public static Flare fromOpaque(double seen) {
    double reaches = Math.pow(10, -seen);
    if (!(reaches < 0.5)) {
      throw new BadValueException(
          "density of the opaque patch",
          String.valueOf(seen),
          "a piece that lets no light through reads more than 0.30 above the surround");
    }
    return new Flare(reaches / (1 - reaches));
  }

  /** What is read in the place of a density [-]. */
  public double seen(double density) {
    return -Math.log10((Math.pow(10, -density) + share) / (1 + share));
  }

  /**
   * The density behind what was read [-].
   *
   * @throws BadValueException when flare alone is brighter than that
   */
  public double corrected(double seen) {
    double passes = Math.pow(10, -seen) * (1 + share) - share;
    if (!(passes > 0)) {
      throw new BadValueException(
          "density read",
          String.valueOf(seen),
          "flare of " + share + " alone gives less than that: nothing can be told of this patch");
    }
    return -Math.log10(passes);
  }
}
