package org.wetside.core.sensitometry;

import java.util.List;
import java.util.Optional;

/**
 * Everything read off one curve.
 *
 * @param results one for each {@link Measure}, in the order of the enum
 * @param condition whether the contrast is that of ISO 6
 * @param isoSpeed the standard speed; only for a calibrated light and when the condition is met
 * @param isoBand the slowest and the fastest standard speed within the band of the speed point,
 *     when both are known
 * @param seed the resamples were drawn with it
 */
public record CurveResults(
    List<CurveResult> results,
    ContrastCondition condition,
    Optional<SpeedStep> isoSpeed,
    List<SpeedStep> isoBand,
    long seed) {
  public CurveResults {
    results = List.copyOf(results);
    isoBand = List.copyOf(isoBand);
  }

  /** The result for one measure. */
  public CurveResult get(Measure measure) {
    return results.get(measure.place());
  }
}
