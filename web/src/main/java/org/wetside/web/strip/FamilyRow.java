package org.wetside.web.strip;

import org.wetside.app.curves.FamilyMember;
import org.wetside.core.sensitometry.CurveResult;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.Measure;

/**
 * One curve of a family in its table.
 *
 * @param id its number
 * @param time development time
 * @param index exposure index, fixed density 0.10
 * @param indexBand of 90 %; empty without one
 * @param deltaX speed by ΔX
 * @param contrast in the measure of the family
 * @param contrastBand of 90 %; empty without one
 * @param condition whether the contrast is that of ISO 6
 */
public record FamilyRow(
    long id,
    String time,
    String index,
    String indexBand,
    String deltaX,
    String contrast,
    String contrastBand,
    String condition) {
  static FamilyRow of(FamilyMember member, Measure measure) {
    CurveResults results = member.answer().results();
    boolean speed = member.kept().strip().light().givesSpeed();
    CurveResult index = results.get(Measure.EXPOSURE_INDEX);
    CurveResult contrast = results.get(measure);
    return new FamilyRow(
        member.kept().id(),
        StripText.time(member.kept().strip()),
        speed ? speed(index) : ResultRows.NOT_DETERMINABLE,
        speed ? Digits.speedBand(index.band()) : "",
        speed ? speed(results.get(Measure.SPEED_DELTA_X)) : ResultRows.NOT_DETERMINABLE,
        contrast.value().isPresent()
            ? Digits.two(contrast.value().getAsDouble())
            : ResultRows.NOT_DETERMINABLE,
        Digits.twoBand(contrast.band()),
        results.condition().word());
  }

  private static String speed(CurveResult result) {
    return result.value().isPresent()
        ? Digits.speed(result.value().getAsDouble())
        : ResultRows.NOT_DETERMINABLE;
  }
}
