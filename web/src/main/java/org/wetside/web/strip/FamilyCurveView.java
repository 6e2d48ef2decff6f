package org.wetside.web.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyMember;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.sensitometry.CurveResult;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Measure;

/**
 * One curve of a family; null is not determinable.
 *
 * @param id its number
 * @param minutes development time
 * @param exposureIndex fixed density 0.10
 * @param exposureIndexBand 90 %
 * @param speedDeltaX speed by ΔX (from memory)
 * @param speedDeltaXBand 90 %
 * @param contrast in the measure of the family
 * @param contrastBand 90 %
 * @param condition whether the contrast is that of ISO 6
 */
public record FamilyCurveView(
    long id,
    double minutes,
    @Nullable Double exposureIndex,
    @Nullable List<Double> exposureIndexBand,
    @Nullable Double speedDeltaX,
    @Nullable List<Double> speedDeltaXBand,
    @Nullable Double contrast,
    @Nullable List<Double> contrastBand,
    String condition) {
  static FamilyCurveView of(FamilyMember member, Measure measure) {
    CurveResults results = member.answer().results();
    boolean speed = member.kept().strip().light().givesSpeed();
    CurveResult index = results.get(Measure.EXPOSURE_INDEX);
    CurveResult deltaX = results.get(Measure.SPEED_DELTA_X);
    CurveResult contrast = results.get(measure);
    return new FamilyCurveView(
        member.kept().id(),
        Digits.minutes(TimeSpan.toSeconds(member.kept().strip().time())),
        speed ? value(index) : null,
        speed ? band(index) : null,
        speed ? value(deltaX) : null,
        speed ? band(deltaX) : null,
        value(contrast),
        band(contrast),
        results.condition().word());
  }

  private static @Nullable Double value(CurveResult result) {
    return result.value().isPresent() ? result.value().getAsDouble() : null;
  }

  private static @Nullable List<Double> band(CurveResult result) {
    return result.band().map(band -> List.of(band.low(), band.high())).orElse(null);
  }
}
