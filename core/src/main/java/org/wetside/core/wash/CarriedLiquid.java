package org.wetside.core.wash;

import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * The liquid that film takes with it from one bath into the next: a part soaked into the gelatine,
 * which gives up what is dissolved slowly, and a part that clings to film, reel and tank and mixes
 * at once.
 *
 * @param film how much film there is, above 0
 * @param absorbed v_f, in the gelatine of all of it
 * @param clinging v_c, on film, reel and tank; above 0
 */
public record CarriedLiquid(UnitOfUse film, Volume absorbed, Volume clinging) {
  /**
   * The carry-over of so much film, parted.
   *
   * @param film above 0
   * @param total all that is carried over with it, more than what the film absorbs
   * @param absorbedPerRoll what one roll's gelatine takes up
   * @throws BadValueException when there is no film, or the total is not above what it absorbs
   */
  public static CarriedLiquid of(UnitOfUse film, Volume total, Volume absorbedPerRoll) {
    if (film.rolls() <= 0) {
      throw new BadValueException("film to wash", film.rolls() + " rolls", "it must be above 0");
    }
    Volume absorbed = absorbedPerRoll.times(film.rolls());
    if (total.compareTo(absorbed) <= 0) {
      throw new BadValueException(
          "carry-over",
          total.toString(),
          "it must be more than the " + absorbed + " that the film itself takes up");
    }
    return new CarriedLiquid(film, absorbed, total.minus(absorbed));
  }

  /** Both parts. */
  public Volume total() {
    return absorbed.plus(clinging);
  }
}
