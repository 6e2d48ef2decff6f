package org.wetside.core.sensitometry;

import java.util.List;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Stops;

/** Log exposures of a series, from how it was made. */
public final class ExposureSeries {
  /** A metered even card gives 8/EI lux seconds at the film (SE-S40; K = 12.5 of the meter). */
  private static final double METERED_LUX_SECONDS = 8;

  private ExposureSeries() {}

  /** Behind the steps of a tablet whose clear part lets this exposure through. */
  public static List<LogExposure> behindTablet(LogExposure clear, List<OpticalDensity> steps) {
    return steps.stream().map(clear::behind).toList();
  }

  /**
   * On the frames of a camera: an even card, metered at an index and exposed so many stops more or
   * less. Not the lux seconds of a calibrated light: meter, lens and shutter are in it.
   */
  public static List<LogExposure> inCamera(ExposureIndex index, List<Stops> stops) {
    LogExposure metered = LogExposure.fromLuxSeconds(METERED_LUX_SECONDS / index.isoArithmetic());
    return stops.stream().map(metered::plus).toList();
  }
}
