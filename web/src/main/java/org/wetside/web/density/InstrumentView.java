package org.wetside.web.density;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.KnownInstrument;

/**
 * An instrument with its calibrations.
 *
 * @param name what it is called
 * @param kind densitometer, scanner or camera
 * @param note how it must be set to read the same again
 * @param claim how much is claimed of its densities
 * @param calibrations the newest first: that one counts
 */
public record InstrumentView(
    String name, String kind, String note, String claim, List<CalibrationView> calibrations) {
  /** The view of an instrument. */
  public static InstrumentView of(KnownInstrument known) {
    List<CalibrationView> calibrations = new ArrayList<>();
    for (int i = 0; i < known.calibrations().size(); i++) {
      calibrations.add(CalibrationView.of(known.calibrations().get(i), known.drift(i)));
    }
    return new InstrumentView(
        known.instrument().name(),
        known.instrument().kind().word(),
        known.instrument().note(),
        known.instrument().kind().seesPixels()
            ? Claim.TEXT
            : "A densitometer is taken at its word; its residuals say how far off it is.",
        calibrations);
  }

  /** The one that counts; null when it was never calibrated. */
  public @Nullable CalibrationView newest() {
    return calibrations.isEmpty() ? null : calibrations.get(0);
  }

  /** Where it is. */
  public String path() {
    return DensityAddress.instrument(name);
  }
}
