package org.wetside.web.density;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.Drift;

/**
 * How far a calibration moved against the one before it.
 *
 * @param largest the largest move in either direction, dimensionless; null when nothing can be
 *     compared
 * @param steps each step that both can tell of
 */
public record DriftView(@Nullable Double largest, List<MovedView> steps) {
  /**
   * One step.
   *
   * @param step its label
   * @param density as read by the later one, dimensionless
   * @param moved later minus earlier for the same patch, dimensionless
   */
  public record MovedView(String step, double density, double moved) {}

  /** The view of a drift. */
  public static DriftView of(Drift drift) {
    return new DriftView(
        drift.largest().isPresent() ? Claim.rounded(drift.largest().getAsDouble()) : null,
        drift.steps().stream()
            .map(
                one ->
                    new MovedView(
                        one.label(), Claim.rounded(one.density()), Claim.rounded(one.moved())))
            .toList());
  }
}
