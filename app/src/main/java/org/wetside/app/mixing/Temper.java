package org.wetside.app.mixing;

import java.util.List;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;

/** Which waters to pour for a volume at a temperature, and what to do without tempering. */
public final class Temper {
  /**
   * What to pour.
   *
   * @param tempering reached, or not with the nearest
   * @param asItComes what everything has when only the first water is taken: the alternative is to
   *     work at that temperature with the time for it
   * @param cautions shown at the moment of pouring; empty when nothing scalds
   */
  public record Answer(Tempering tempering, Temperature asItComes, List<Caution> cautions) {}

  /** Balances masses and heat. */
  public Answer answer(TemperingQuestion question) {
    Tempering tempering = question.answer();
    return new Answer(
        tempering,
        question.asItComes(),
        tempering.scalds() ? List.of(Cautions.open().ofHotWater()) : List.of());
  }
}
