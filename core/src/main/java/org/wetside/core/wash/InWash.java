package org.wetside.core.wash;

import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Concentration;

/**
 * What is dissolved in the two liquids of a wash.
 *
 * @param inFilm C_f, in what the gelatine has taken up
 * @param inWater C, in the water around it and in what clings when that is drained
 */
public record InWash(Concentration inFilm, Concentration inWater) {
  /** Film straight out of its bath: the same strength everywhere. */
  public static InWash straightFrom(Concentration bath) {
    return new InWash(bath, bath);
  }

  /**
   * What the gelatine holds, on the area of the film: C_f·v_f/A. A lower bound of what stays there:
   * neither what is adsorbed, nor what a hardener holds back, nor what dries from the water that
   * clings is in it.
   */
  public ArealMass residue(CarriedLiquid carried) {
    return onFilm(inFilm, carried);
  }

  /** A strength of the absorbed liquid as mass on the area of the film. */
  static ArealMass onFilm(Concentration strength, CarriedLiquid carried) {
    double grams = strength.gramsPerLitre() * carried.absorbed().millilitres() / 1000.0;
    return ArealMass.ofGramsPerSquareMetre(grams / (carried.film().squareCentimetres() / 1e4));
  }
}
