package org.wetside.core.learning;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.BadValueException;

/**
 * Two frames of an even card, the last two of a roll: metered four stops under and two stops over.
 *
 * @param baseFog density of clear film beside them [-]; empty when it was not read
 * @param shadow density of the frame four stops under [-]
 * @param light density of the frame two stops over [-]
 */
public record ReferencePair(Optional<Double> baseFog, double shadow, double light) {
  /** Stops between the two frames. */
  public static final double STOPS = 6;

  /** One stop as a difference of log10 exposure. */
  static final double LOG_PER_STOP = Math.log10(2);

  private static final double DENSEST = 5;

  /**
   * Checks what can be wrong with it.
   *
   * @throws BadValueException when a density is not between 0 and 5, the light frame is not denser
   *     than the dark one, or clear film is denser than a frame
   */
  public ReferencePair {
    baseFog.ifPresent(density -> check("base plus fog", density));
    check("density four stops under", shadow);
    check("density two stops over", light);
    if (!(light > shadow)) {
      throw new BadValueException(
          "density two stops over",
          String.valueOf(light),
          "it must be above the density four stops under, " + shadow + "; are they exchanged?");
    }
    if (baseFog.isPresent() && baseFog.get() > shadow) {
      throw new BadValueException(
          "base plus fog",
          String.valueOf(baseFog.get()),
          "it must not be above the density four stops under, " + shadow);
    }
  }

  private static void check(String thing, double density) {
    if (!(density >= 0 && density <= DENSEST)) {
      throw new BadValueException(
          thing, String.valueOf(density), "a density between 0 and " + (int) DENSEST);
    }
  }

  /** Contrast over six stops: difference of density over difference of log exposure [-]. */
  public double contrast() {
    return (light - shadow) / (STOPS * LOG_PER_STOP);
  }

  /** Standard deviation of ln(contrast) when each density is read that surely [-]. */
  double lnContrastSd(double densitySd) {
    return Math.sqrt(2) * densitySd / (light - shadow);
  }

  /** Density of the dark frame above clear film [-]; empty when clear film was not read. */
  public OptionalDouble netShadow() {
    return baseFog.isPresent() ? OptionalDouble.of(shadow - baseFog.get()) : OptionalDouble.empty();
  }
}
