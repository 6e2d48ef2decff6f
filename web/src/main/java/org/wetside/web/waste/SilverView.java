package org.wetside.web.waste;

import org.jspecify.annotations.Nullable;
import org.wetside.core.waste.SilverEstimate;

/**
 * An estimate of silver: a range with its source.
 *
 * @param leastGrams lower end
 * @param mostGrams upper end
 * @param leastGramsPerLitre lower end of the figure on file
 * @param mostGramsPerLitre upper end of the figure on file
 * @param countedMl used fixer and bleach-fix, which the figure is about
 * @param leftOutMl what else is in the jug, of which no figure is on file
 * @param source what the figure is cited from
 * @param standing how it is known
 * @param note how far it is to be believed
 */
public record SilverView(
    double leastGrams,
    double mostGrams,
    double leastGramsPerLitre,
    double mostGramsPerLitre,
    double countedMl,
    double leftOutMl,
    String source,
    String standing,
    String note) {
  /** The view of an estimate; null where there is none. */
  static @Nullable SilverView of(SilverEstimate estimate) {
    return estimate.countedLitres() == 0
        ? null
        : new SilverView(
            estimate.leastGrams(),
            estimate.mostGrams(),
            estimate.content().leastGramsPerLitre(),
            estimate.content().mostGramsPerLitre(),
            estimate.countedLitres() * 1000,
            estimate.leftOutLitres() * 1000,
            estimate.content().citation().toString(),
            estimate.content().standing().word(),
            estimate.content().note());
  }
}
