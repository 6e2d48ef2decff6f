package org.wetside.core.sensitometry;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;

/**
 * The densities read on one piece of film, with what is known of it.
 *
 * @param readings in any order; a step that was read more than once stands there more than once
 * @param baseFog density of base plus fog, in the same counting as the readings (0 for net ones);
 *     empty to find it from them
 * @param densityStep to what the densities are rounded, for example 0.01 [-]
 * @param calibrated whether the exposures are lux seconds of a light that was calibrated
 */
public record CurveReadings(
    List<StepReading> readings,
    Optional<OpticalDensity> baseFog,
    double densityStep,
    boolean calibrated) {
  /** What most densitometers show. */
  public static final double USUAL_STEP = 0.01;

  /** A curve bends: two points show nothing of it. */
  private static final int FEWEST_STEPS = 3;

  public CurveReadings {
    readings = List.copyOf(readings);
    long steps = readings.stream().map(StepReading::logExposure).distinct().count();
    if (steps < FEWEST_STEPS) {
      throw new BadValueException(
          "steps",
          String.valueOf(steps),
          "a curve wants at least " + FEWEST_STEPS + " different exposures, a tablet has 11 to 31");
    }
    if (!(densityStep >= 0) || !(densityStep < 1)) {
      throw new BadValueException(
          "rounding of the densities", String.valueOf(densityStep), "it must be from 0 to below 1");
    }
  }
}
