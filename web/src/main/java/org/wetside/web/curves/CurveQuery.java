package org.wetside.web.curves;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.StepTable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.sensitometry.CurveReadings;

/**
 * What is said beside the readings of a curve, as it was typed; null or blank is not said.
 *
 * @param baseFog density of base plus fog, for example {@code 0.25}, or {@code 0} for net
 *     densities; without it the first steps must be flat enough to find it
 * @param calibrated {@code yes} when log H is in lux seconds of a light that was calibrated
 */
public record CurveQuery(@Nullable String baseFog, @Nullable String calibrated) {
  /**
   * The readings in the types of the trade.
   *
   * @throws BadValueException when something typed is not understood
   */
  public CurveReadings readings(StepTable table) {
    return new CurveReadings(table.readings(), density(), table.densityStep(), isCalibrated());
  }

  private Optional<OpticalDensity> density() {
    if (baseFog == null || baseFog.isBlank()) {
      return Optional.empty();
    }
    String typed = baseFog.strip();
    if (typed.matches("\\d*,\\d+")) {
      throw new BadValueException(
          "base plus fog", typed, "its decimal mark is a comma: write a point, for example 0.25");
    }
    if (!typed.matches("\\d+\\.?\\d*|\\.\\d+")) {
      throw new BadValueException(
          "base plus fog", typed, "it must be a density, for example 0.25, or 0 for net densities");
    }
    return Optional.of(OpticalDensity.of(Double.parseDouble(typed)));
  }

  private boolean isCalibrated() {
    if (calibrated == null || calibrated.isBlank() || calibrated.equals("no")) {
      return false;
    }
    if (!calibrated.equals("yes")) {
      throw new BadValueException("calibrated", calibrated, "say yes or no");
    }
    return true;
  }
}
