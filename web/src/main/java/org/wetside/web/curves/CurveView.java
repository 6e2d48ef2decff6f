package org.wetside.web.curves;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.ReadCurve;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Interval;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.sensitometry.SpeedStep;
import org.wetside.core.source.Standing;

/**
 * What a curve shows, as {@code POST /api/curve} answers and {@code wetside curve --json} prints.
 * Null is not determinable, {@code remarks} say why; a band is low and high of 90 %.
 *
 * @param logHm log10 lx·s at the speed point, 0.10 above base plus fog
 * @param logHmBand its band
 * @param deltaD density over 1.30 of log exposure from there
 * @param deltaDBand its band
 * @param contrast whether that is the contrast of ISO 6: met, met not certain, not met
 * @param isoSpeed standard speed; only for a calibrated light and when the contrast is met
 * @param isoSpeedBand slowest and fastest standard speed in the band of the speed point
 * @param isoDegrees the same speed in degrees
 * @param isoDegreesBand its band
 * @param exposureIndex 0.80/Hm, fixed density 0.10; never called ISO
 * @param exposureIndexBand its band
 * @param deltaX 0.83 − 0.86 ΔD + 0.24 ΔD² (from memory)
 * @param deltaXBand its band
 * @param speedDeltaX speed by ΔX (from memory)
 * @param speedDeltaXBand its band
 * @param averageGradient chord from the speed point over 1.50 of log exposure
 * @param averageGradientBand its band
 * @param contrastIndex slope of the ray met at distances 0.2 and 2.2
 * @param contrastIndexBand its band
 * @param gamma slope of the longest straight part
 * @param gammaBand its band
 * @param baseFog density of base plus fog
 * @param baseFogFound whether it was found in the first steps
 * @param steps different exposures
 * @param moved steps levelled out because densities fell
 * @param outliers steps more than 0.03 off the smooth curve
 * @param remarks why results or bands are missing
 * @param standing that of the weakest step: what is marked above is from memory; the densities are
 *     measured
 * @param seed of the resamples behind the bands
 */
public record CurveView(
    @Nullable Double logHm,
    @Nullable List<Double> logHmBand,
    @Nullable Double deltaD,
    @Nullable List<Double> deltaDBand,
    String contrast,
    @Nullable Double isoSpeed,
    @Nullable List<Double> isoSpeedBand,
    @Nullable Integer isoDegrees,
    @Nullable List<Integer> isoDegreesBand,
    @Nullable Double exposureIndex,
    @Nullable List<Double> exposureIndexBand,
    @Nullable Double deltaX,
    @Nullable List<Double> deltaXBand,
    @Nullable Double speedDeltaX,
    @Nullable List<Double> speedDeltaXBand,
    @Nullable Double averageGradient,
    @Nullable List<Double> averageGradientBand,
    @Nullable Double contrastIndex,
    @Nullable List<Double> contrastIndexBand,
    @Nullable Double gamma,
    @Nullable List<Double> gammaBand,
    double baseFog,
    boolean baseFogFound,
    int steps,
    List<MovedView> moved,
    List<OutlierView> outliers,
    List<RemarkView> remarks,
    String standing,
    long seed) {
  /** Why there is no speed with relative light. */
  public static final String NO_SPEED =
      "not determinable: the log exposures are relative, only their differences are known";

  /** The view of an answer whose exposures are lux seconds. */
  public static CurveView of(ReadCurve.Answer answer) {
    return of(answer, true);
  }

  /**
   * The view of an answer.
   *
   * @param givesSpeed whether the exposures are lux seconds; without, no speed is shown
   */
  public static CurveView of(ReadCurve.Answer answer, boolean givesSpeed) {
    CharacteristicCurve curve = answer.curve();
    CurveResults results = answer.results();
    List<SpeedStep> iso = results.isoBand();
    return new CurveView(
        value(results, Measure.LOG_HM),
        band(results, Measure.LOG_HM),
        value(results, Measure.DELTA_D),
        band(results, Measure.DELTA_D),
        results.condition().word(),
        results.isoSpeed().map(SpeedStep::iso).orElse(null),
        iso.isEmpty() ? null : iso.stream().map(SpeedStep::iso).toList(),
        results.isoSpeed().map(SpeedStep::degrees).orElse(null),
        iso.isEmpty() ? null : iso.stream().map(SpeedStep::degrees).toList(),
        givesSpeed ? value(results, Measure.EXPOSURE_INDEX) : null,
        givesSpeed ? band(results, Measure.EXPOSURE_INDEX) : null,
        value(results, Measure.DELTA_X),
        band(results, Measure.DELTA_X),
        givesSpeed ? value(results, Measure.SPEED_DELTA_X) : null,
        givesSpeed ? band(results, Measure.SPEED_DELTA_X) : null,
        value(results, Measure.AVERAGE_GRADIENT),
        band(results, Measure.AVERAGE_GRADIENT),
        value(results, Measure.CONTRAST_INDEX),
        band(results, Measure.CONTRAST_INDEX),
        value(results, Measure.GAMMA),
        band(results, Measure.GAMMA),
        curve.baseFog().density().value(),
        curve.baseFog().isFound(),
        curve.stepCount(),
        curve.moved().stream().map(MovedView::of).toList(),
        curve.outliers().stream().map(OutlierView::of).toList(),
        remarks(results, givesSpeed),
        Standing.FROM_MEMORY.word(),
        results.seed());
  }

  private static List<RemarkView> remarks(CurveResults results, boolean givesSpeed) {
    return results.results().stream()
        .map(
            result ->
                !givesSpeed && isSpeed(result.measure())
                    ? new RemarkView(result.measure().words(), NO_SPEED)
                    : RemarkView.of(result))
        .filter(remark -> !remark.reason().isEmpty())
        .toList();
  }

  /** Whether it means something only in lux seconds. */
  public static boolean isSpeed(Measure measure) {
    return measure == Measure.EXPOSURE_INDEX || measure == Measure.SPEED_DELTA_X;
  }

  private static @Nullable Double value(CurveResults results, Measure measure) {
    return results.get(measure).value().isPresent()
        ? results.get(measure).value().getAsDouble()
        : null;
  }

  private static @Nullable List<Double> band(CurveResults results, Measure measure) {
    return results.get(measure).band().map(CurveView::ends).orElse(null);
  }

  private static List<Double> ends(Interval band) {
    return List.of(band.low(), band.high());
  }
}
