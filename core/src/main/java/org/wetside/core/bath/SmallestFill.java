package org.wetside.core.bath;

import java.util.Optional;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Volume;

/**
 * The smallest fill of a tank that covers its film and holds the minimum of stock: {@link Fits} or
 * {@link DoesNotFit}.
 */
public sealed interface SmallestFill permits SmallestFill.Fits, SmallestFill.DoesNotFit {
  /**
   * A fill within the tank.
   *
   * @param fill how much to make up
   * @param raisedForStock whether the stock, and not the covering of the film, asks for it
   */
  record Fits(Volume fill, boolean raisedForStock) implements SmallestFill {}

  /**
   * The stock needed asks for more than the tank holds: fewer rolls at once, or less dilution.
   *
   * @param needed the fill that would do
   * @param holds the most the tank takes
   * @param most how much film a full tank has stock for
   */
  record DoesNotFit(Volume needed, Volume holds, UnitOfUse most) implements SmallestFill {}

  /**
   * Finds the fill.
   *
   * @param covers the volume that covers the film in this tank
   * @param holds the most the tank takes; not below {@code covers}
   * @param dilution parts of the working solution
   * @param film all film in the tank
   * @param minimum the maker's minimum, when on file; without it the covering volume is answered
   */
  static SmallestFill of(
      Volume covers,
      Volume holds,
      DilutionRatio dilution,
      UnitOfUse film,
      Optional<StockMinimum> minimum) {
    if (minimum.isEmpty()) {
      return new Fits(covers, false);
    }
    double fillPerStock = dilution.totalParts() / dilution.concentrateParts();
    Volume needed = minimum.get().needFor(film).times(fillPerStock);
    if (needed.millilitres() > holds.millilitres() + StockRequirement.TOLERATED_ML) {
      Volume stockInFull = dilution.concentrateIn(holds);
      return new DoesNotFit(
          needed, holds, UnitOfUse.ofRolls(stockInFull.ratioTo(minimum.get().perRoll())));
    }
    return needed.compareTo(covers) > 0 ? new Fits(needed, true) : new Fits(covers, false);
  }
}
