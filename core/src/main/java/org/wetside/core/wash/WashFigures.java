package org.wetside.core.wash;

import java.util.List;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Volume;

/**
 * The published figures that every forecast of a wash rests on.
 *
 * @param absorbedPerRoll v_f of one roll
 * @param carriedPerRoll all that is usually carried over with one roll
 * @param start strength of the fixer in the worked example the volumes come from
 * @param halfTimes all on file, the shortest first; they disagree, so each is followed
 * @param cold what cold water does
 * @param limit what may stay on the film
 */
public record WashFigures(
    Volume absorbedPerRoll,
    Volume carriedPerRoll,
    Concentration start,
    List<HalfTime> halfTimes,
    ColdWater cold,
    ResidueLimit limit) {
  public WashFigures {
    halfTimes = List.copyOf(halfTimes);
  }
}
