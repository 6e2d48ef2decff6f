package org.wetside.core.sensitometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * The standard speeds.
 *
 * @param steps in any order
 */
public record SpeedScale(List<SpeedStep> steps) {
  private static final double SLACK = 1e-9;

  public SpeedScale {
    steps = List.copyOf(steps);
  }

  /**
   * The speed of a speed point: log Hm is rounded to two decimals, half away from zero, and looked
   * up.
   *
   * @return empty beyond the scale
   */
  public Optional<SpeedStep> of(double logHm) {
    double rounded = BigDecimal.valueOf(logHm).setScale(2, RoundingMode.HALF_UP).doubleValue();
    return steps.stream()
        .filter(step -> rounded >= step.fromLogHm() - SLACK && rounded <= step.toLogHm() + SLACK)
        .findFirst();
  }
}
