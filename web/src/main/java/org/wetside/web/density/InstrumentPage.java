package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one instrument.
 *
 * @param sheet the sheet
 * @param instrument with its history
 */
public record InstrumentPage(Sheet sheet, InstrumentView instrument) {
  /** The calibration that counts; null when there is none. */
  public @Nullable CalibrationView newest() {
    return instrument.newest();
  }

  /** A residual as it is written. */
  public static String residual(CalibrationView.StepView step) {
    return step.residual() == null
        ? step.used() ? "end of the table" : "not used"
        : Claim.difference(step.residual());
  }

  /** The drift of a calibration in words. */
  public static String drift(CalibrationView calibration) {
    DriftView drift = calibration.drift();
    if (drift == null) {
      return "the first";
    }
    return drift.largest() == null
        ? "not comparable with the one before"
        : "moved " + Claim.density(drift.largest()) + " at most";
  }
}
