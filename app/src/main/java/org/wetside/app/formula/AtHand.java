package org.wetside.app.formula;

import java.util.Optional;
import org.wetside.app.equipment.KeepMeasures;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.quantity.Mass;
import org.wetside.reference.Chemicals;

/**
 * What there is to weigh and measure with when a question does not say.
 *
 * @param balance the one written down under Equipment; empty when none is
 * @param measures those written down under Equipment; empty when none is
 */
public record AtHand(Optional<Balance> balance, Optional<Measures> measures) {
  /** The step of a pocket balance, taken where none is known. Common practice. */
  public static final Balance USUAL_BALANCE = new Balance(Mass.ofGrams(0.1));

  /** Only what is usual, for whoever has no home at hand. */
  public static final AtHand USUAL = new AtHand(Optional.empty(), Optional.empty());

  /** What is written down in a home. */
  public static AtHand of(KeepMeasures kept) {
    var measures = kept.all();
    return new AtHand(
        kept.balance(),
        measures.isEmpty() ? Optional.empty() : Optional.of(new Measures(measures)));
  }

  /** The balance to weigh on. */
  public Balance balanceOrUsual() {
    return balance.orElse(USUAL_BALANCE);
  }

  /** The syringes and graduates to choose from. */
  public Measures measuresOrUsual() {
    return measures.orElseGet(Chemicals::usualMeasures);
  }
}
