package org.wetside.core.instrument;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.CalibrationStep;
import org.wetside.core.sensitometry.NegativeKind;
import org.wetside.core.sensitometry.ScannerCalibration;
import org.wetside.core.sensitometry.TabletPatch;

/** A scanner or camera, by what it made of its tablet. */
final class PixelDensities implements DensityScale {
  private final Calibration calibration;
  private final ScannerCalibration fitted;
  private final Map<Double, Double> residuals = new HashMap<>();
  private final Neutrality neutrality;

  PixelDensities(Calibration calibration) {
    this.calibration = calibration;
    List<TabletPatch> patches =
        calibration.steps().stream()
            .filter(step -> means(step).measured() > 0)
            .map(step -> new TabletPatch(means(step).measured(), step.density()))
            .toList();
    fitted =
        calibration.method() == Calibration.Method.TABLE
            ? ScannerCalibration.byTable(patches)
            : ScannerCalibration.byFormula(patches);
    for (CalibrationStep step : fitted.steps()) {
      residuals.put(step.density(), step.residual());
    }
    neutrality =
        Neutrality.of(
            calibration.steps().stream()
                .filter(step -> residuals.containsKey(step.density().value()))
                .map(PixelDensities::means)
                .toList());
  }

  @Override
  public PatchDensity densityOf(Seen seen, NegativeKind negative) {
    if (!(seen instanceof Means means) || !means.channel().equals(calibration.channel())) {
      throw new BadValueException(
          "patch",
          seen instanceof Means other ? "seen in " + other.channel() : "a density",
          "the calibration was made in "
              + calibration.channel()
              + ": scan both the same way, or calibrate anew");
    }
    OptionalDouble density = fitted.densityOf(means.measured(), negative);
    if (neutrality.isColoured(means)) {
      return new PatchDensity.NotRead(
          "its colours stand apart by more than the tablet's: stained and colour negatives are not"
              + " read");
    }
    if (density.isPresent()) {
      return new PatchDensity.Read(density.getAsDouble());
    }
    return brighterThanTablet(means)
        ? new PatchDensity.NotRead(
            "brighter than the clearest usable step, density " + plain(clearest()))
        : new PatchDensity.NotRead(
            "darker than the densest usable step, density " + plain(densest()), true);
  }

  private boolean brighterThanTablet(Means means) {
    return means.measured()
        > fitted.steps().stream().mapToDouble(CalibrationStep::pixel).max().orElseThrow();
  }

  private static String plain(double density) {
    return String.valueOf(Math.round(density * 1000) / 1000.0);
  }

  @Override
  public List<StepFit> fits() {
    return calibration.steps().stream()
        .map(
            step -> {
              Double residual = residuals.get(step.density().value());
              return new StepFit(
                  step,
                  residual != null,
                  residual == null || residual.isNaN()
                      ? OptionalDouble.empty()
                      : OptionalDouble.of(residual));
            })
        .toList();
  }

  @Override
  public double clearest() {
    return fitted.clearestDensity();
  }

  @Override
  public double densest() {
    return fitted.densestDensity();
  }

  private static Means means(SeenStep step) {
    if (step.seen() instanceof Means means) {
      return means;
    }
    throw new IllegalStateException("a calibration of pixels holds means only");
  }
}
