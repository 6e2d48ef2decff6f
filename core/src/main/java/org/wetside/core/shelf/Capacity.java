package org.wetside.core.shelf;

import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * How much film a bath does before it is spent.
 *
 * @param bath the table's name for it
 * @param rollsPerLitre rolls of 80 in² of ordinary film for each litre, the lesser figure where the
 *     source gives two; above 0
 * @param standing how it is known
 * @param citation where it stands
 */
public record Capacity(String bath, double rollsPerLitre, Standing standing, Citation citation) {
  public Capacity {
    if (!(rollsPerLitre > 0) || Double.isInfinite(rollsPerLitre)) {
      throw new BadValueException("capacity", rollsPerLitre + " rolls/L", "it must be above 0");
    }
  }

  /** What that much of the bath does, of ordinary film. */
  public UnitOfUse of(Volume volume) {
    return UnitOfUse.ofRolls(rollsPerLitre * volume.millilitres() / 1000);
  }

  /** What a bottle can still do, of ordinary film; never below 0. */
  public UnitOfUse leftIn(Bottle bottle) {
    double left = of(bottle.state().basis()).rolls() - bottle.state().load().rolls();
    return UnitOfUse.ofRolls(Math.max(0, left));
  }

  /**
   * How many whole rolls of a film that is.
   *
   * @param left what a bath can still do, of ordinary film
   * @param amount how much film one roll is, above 0
   */
  public static int wholeRolls(UnitOfUse left, UnitOfUse amount, BathKind bath, boolean tabular) {
    double each = amount.rolls() * FilmUse.weight(bath, tabular);
    return (int) Math.floor(left.rolls() / each + 1e-9);
  }
}
