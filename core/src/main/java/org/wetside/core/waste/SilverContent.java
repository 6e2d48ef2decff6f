package org.wetside.core.waste;

import java.util.List;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * How much silver used fixer is said to hold.
 *
 * @param leastGramsPerLitre the lower end as stated
 * @param mostGramsPerLitre the upper end as stated
 * @param citation where it was read
 * @param standing how it is known
 * @param note how far it is to be believed
 */
public record SilverContent(
    double leastGramsPerLitre,
    double mostGramsPerLitre,
    Citation citation,
    Standing standing,
    String note) {

  /** What that makes of what was poured together; what is no used fixer is left out. */
  public SilverEstimate in(List<Poured> pourings) {
    double counted = 0;
    double all = 0;
    for (Poured poured : pourings) {
      double litres = poured.volume().millilitres() / 1000;
      all += litres;
      counted += poured.isUsedFixer() ? litres : 0;
    }
    return new SilverEstimate(
        counted * leastGramsPerLitre, counted * mostGramsPerLitre, counted, all - counted, this);
  }
}
