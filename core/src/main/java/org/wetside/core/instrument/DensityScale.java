package org.wetside.core.instrument;

import java.util.List;
import org.wetside.core.sensitometry.NegativeKind;

/** From what an instrument sees to a density, with its limits. */
public sealed interface DensityScale permits PixelDensities, ShownScale {
  /** The density of a patch, or why there is none. */
  PatchDensity densityOf(Seen seen, NegativeKind negative);

  /** How well each step of the tablet comes back, in the order of the tablet. */
  List<StepFit> fits();

  /** Density of the clearest step that can be used [-]. */
  double clearest();

  /** Density of the densest step that can be used [-]: nothing denser is read. */
  double densest();

  /** The largest residual of a step that is used [-]; 0 when none has one. */
  default double largestResidual() {
    return fits().stream()
        .filter(fit -> fit.residual().isPresent())
        .mapToDouble(fit -> Math.abs(fit.residual().getAsDouble()))
        .max()
        .orElse(0);
  }
}
