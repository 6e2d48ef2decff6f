package org.wetside.web.density;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.DensityScale;
import org.wetside.core.instrument.Drift;
import org.wetside.core.instrument.Means;
import org.wetside.core.instrument.SeenDensity;
import org.wetside.core.instrument.StepFit;

/**
 * One calibration with its residuals and limits.
 *
 * @param on day it was made
 * @param tablet name of the step tablet
 * @param method formula, table or as shown
 * @param channel grey, green, or density for a densitometer
 * @param note settings, light, picture
 * @param clearest density of the clearest usable step, dimensionless
 * @param densest density of the densest usable step: nothing denser is read
 * @param largestResidual of the steps that are used, dimensionless
 * @param steps of the tablet
 * @param drift against the calibration before it; null for the first
 */
public record CalibrationView(
    String on,
    String tablet,
    String method,
    String channel,
    String note,
    double clearest,
    double densest,
    double largestResidual,
    List<StepView> steps,
    @Nullable DriftView drift) {
  /**
   * One step.
   *
   * @param step its label
   * @param density as the tablet said that day, dimensionless
   * @param seen density shown, or the mean of the channel that is measured
   * @param used whether the instrument tells it from its neighbours
   * @param residual density read minus the tablet's; null where there is none
   */
  public record StepView(
      String step, double density, double seen, boolean used, @Nullable Double residual) {}

  /** The view of a calibration. */
  public static CalibrationView of(Calibration calibration, Optional<Drift> drift) {
    DensityScale scale = calibration.scale();
    return new CalibrationView(
        calibration.on().toString(),
        calibration.tablet(),
        calibration.method().word(),
        calibration.channel(),
        calibration.note(),
        scale.clearest(),
        scale.densest(),
        Claim.rounded(scale.largestResidual()),
        scale.fits().stream().map(CalibrationView::step).toList(),
        drift.map(DriftView::of).orElse(null));
  }

  private static StepView step(StepFit fit) {
    double seen =
        fit.step().seen() instanceof Means means
            ? means.measured()
            : ((SeenDensity) fit.step().seen()).density().value();
    return new StepView(
        fit.step().label(),
        fit.step().density().value(),
        seen,
        fit.used(),
        fit.residual().isPresent() ? Claim.rounded(fit.residual().getAsDouble()) : null);
  }

  /** What was seen of a step, as it is written. */
  public String seenWords(StepView step) {
    return channel.equals("density") ? Claim.density(step.seen()) : Claim.pixel(step.seen());
  }
}
