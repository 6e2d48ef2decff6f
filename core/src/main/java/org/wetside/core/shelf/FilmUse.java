package org.wetside.core.shelf;

import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;

/**
 * A roll that went through a bath.
 *
 * @param roll its number; empty when it is not known
 * @param film film, in words; may be empty
 * @param amount how much film it is
 * @param tabular whether its film is of tabular grain
 */
public record FilmUse(String roll, String film, UnitOfUse amount, boolean tabular) {
  /**
   * What tabular-grain film counts in a fixer: it gets two thirds of the rolls (CH-S31; CH-S32
   * gives 50 to 70 %).
   */
  public static final double TABULAR_IN_FIXER = 1.5;

  /** Film of which only the amount is known. */
  public static FilmUse unnamed(UnitOfUse amount) {
    return new FilmUse("", "", amount, false);
  }

  /** What it counts against the capacity of such a bath. */
  public UnitOfUse loadIn(BathKind bath) {
    return amount.times(weight(bath, tabular));
  }

  /** What one unit of such film counts in such a bath, dimensionless. */
  public static double weight(BathKind bath, boolean tabular) {
    return tabular && fixes(bath) ? TABULAR_IN_FIXER : 1;
  }

  /** Whether such a bath fixes. */
  public static boolean fixes(BathKind bath) {
    return bath == BathKind.FIXER || bath == BathKind.BLEACH_FIX;
  }
}
