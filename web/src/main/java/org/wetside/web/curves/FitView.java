package org.wetside.web.curves;

import java.util.List;
import org.wetside.core.sensitometry.ContrastDescription;

/**
 * The exponential g∞(1 − exp(−k(t − t0))) through the points: a description, the time is not read
 * from it.
 *
 * @param limit g∞
 * @param limitSd its standard error
 * @param ratePerMinute k
 * @param ratePerMinuteSd its standard error
 * @param delayMinutes t0
 * @param delayMinutesSd its standard error
 * @param residualSd standard deviation of what is left of the points
 * @param warnings what speaks against it all the same
 */
public record FitView(
    double limit,
    double limitSd,
    double ratePerMinute,
    double ratePerMinuteSd,
    double delayMinutes,
    double delayMinutesSd,
    double residualSd,
    List<String> warnings) {
  /** The view of a description. */
  public static FitView of(ContrastDescription.Described fit) {
    return new FitView(
        fit.saturation().limit(),
        fit.standardErrors().limit(),
        fit.saturation().ratePerMinute(),
        fit.standardErrors().ratePerMinute(),
        fit.saturation().delayMinutes(),
        fit.standardErrors().delayMinutes(),
        fit.residual(),
        fit.warnings());
  }
}
