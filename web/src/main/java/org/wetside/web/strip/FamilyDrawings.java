package org.wetside.web.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.ContrastPoint;

/**
 * The drawings of a family, each for a wide and for a narrow sheet.
 *
 * @param wide the curves
 * @param narrow the curves
 * @param contrastWide contrast against time; null with fewer than two times
 * @param contrastNarrow likewise
 * @param speedWide speed against time; null when no speed is known
 * @param speedNarrow likewise
 */
public record FamilyDrawings(
    CurveDrawing wide,
    CurveDrawing narrow,
    @Nullable TimeDrawing contrastWide,
    @Nullable TimeDrawing contrastNarrow,
    @Nullable TimeDrawing speedWide,
    @Nullable TimeDrawing speedNarrow) {
  static FamilyDrawings of(FamilyAnswer family) {
    String name = StripText.name(family.members().get(0).kept().strip());
    boolean contrast =
        family.contrast().stream().map(ContrastPoint::seconds).distinct().count() >= 2;
    boolean speed =
        family.givesSpeed()
            && family.speed().stream()
                    .filter(one -> one.fixedDensity().value().isPresent())
                    .map(one -> one.time())
                    .distinct()
                    .count()
                >= 2;
    return new FamilyDrawings(
        curves(family, name, CurveDrawing.WIDE),
        curves(family, name, CurveDrawing.NARROW),
        contrast ? contrast(family, name, CurveDrawing.WIDE) : null,
        contrast ? contrast(family, name, CurveDrawing.NARROW) : null,
        speed ? speed(family, name, CurveDrawing.WIDE) : null,
        speed ? speed(family, name, CurveDrawing.NARROW) : null);
  }

  private static CurveDrawing curves(FamilyAnswer family, String name, double width) {
    List<CharacteristicCurve> curves =
        family.members().stream().map(one -> one.answer().curve()).toList();
    List<String> labels =
        family.members().stream().map(one -> StripText.time(one.kept().strip())).toList();
    return CurveDrawing.family(
        curves, labels, family.givesSpeed(), "Characteristic curves, " + name, width);
  }

  private static TimeDrawing contrast(FamilyAnswer family, String name, double width) {
    return TimeDrawing.contrast(family, "Contrast against time, " + name, width);
  }

  private static TimeDrawing speed(FamilyAnswer family, String name, double width) {
    return TimeDrawing.speed(family.speed(), "Speed against time, " + name, width);
  }
}
