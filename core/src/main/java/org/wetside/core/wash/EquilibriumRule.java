package org.wetside.core.wash;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Volume;

/**
 * The rule of fills: each fill of V thins what was carried over, v, to v/(v + V) of its strength
 * (volumes of source CH-S30). It holds only when film and water have come to one strength, which
 * takes many half-times: what it gives is the best that a number of fills can do, not what they do.
 */
public final class EquilibriumRule {
  private EquilibriumRule() {}

  /** The part that is left after one fill, dimensionless. */
  public static double left(Volume carriedOver, Volume fill) {
    return carriedOver.ratioTo(carriedOver.plus(fill));
  }

  /** The strength after each of the fills. */
  public static List<Concentration> afterEach(
      Concentration start, Volume carriedOver, List<Volume> fills) {
    List<Concentration> strengths = new ArrayList<>();
    Concentration strength = start;
    for (Volume fill : fills) {
      strength = strength.times(left(carriedOver, fill));
      strengths.add(strength);
    }
    return strengths;
  }
}
