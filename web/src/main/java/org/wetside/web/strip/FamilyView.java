package org.wetside.web.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.app.curves.ReadFamily;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.web.curves.FitView;

/**
 * What strips show together, as {@code GET /api/curves/family} answers.
 *
 * @param film of all
 * @param developer of all
 * @param dilution of all
 * @param measure contrast-index or average-gradient
 * @param range log exposure range aimed at, log10
 * @param flare of camera and lens, log10
 * @param curves by rising time
 * @param times for N − 2 to N + 2
 * @param fit the exponential through contrast against time; null when refused
 * @param fitRefused why there is none; null when there is one
 * @param standing of the times
 * @param seed of the draws behind the bands
 */
public record FamilyView(
    String film,
    String developer,
    String dilution,
    String measure,
    double range,
    double flare,
    List<FamilyCurveView> curves,
    List<NView> times,
    @Nullable FitView fit,
    @Nullable String fitRefused,
    String standing,
    long seed) {
  static FamilyView of(FamilyAnswer family) {
    var strip = family.members().get(0).kept().strip();
    ContrastDescription description = family.description().orElse(null);
    return new FamilyView(
        strip.film(),
        strip.developer(),
        strip.dilution().label(),
        FamilyText.word(family.aim().measure()),
        family.aim().logExposureRange(),
        family.aim().flare(),
        family.members().stream()
            .map(one -> FamilyCurveView.of(one, family.aim().measure()))
            .toList(),
        family.times().stream().map(one -> NView.of(one, family)).toList(),
        description instanceof ContrastDescription.Described fit ? FitView.of(fit) : null,
        description instanceof ContrastDescription.Refused refused
            ? refused.reason()
            : description == null ? "contrast is determinable at fewer than two times" : null,
        "measured",
        ReadFamily.SEED);
  }
}
