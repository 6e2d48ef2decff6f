package org.wetside.core.chemistry;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;

/**
 * The balance at hand.
 *
 * @param step the smallest difference it shows, above 0
 */
public record Balance(Mass step) {
  /**
   * How many steps something must weigh to be weighed on it: half a step is then 2.5 %. Common
   * practice.
   */
  public static final int LEAST_STEPS = 20;

  private static final double COARSEST_GRAMS = 100;
  private static final double ROUNDING = 1e-9;

  /** Refuses a step that no balance has. */
  public Balance {
    if (step.grams() <= 0) {
      throw new BadValueException("balance step", step.toString(), "it must be more than 0 g");
    }
    if (step.grams() > COARSEST_GRAMS) {
      throw new BadValueException("balance step", step.toString(), "it must be at most 100 g");
    }
  }

  /** How far half a step is from what is wanted, percent. */
  public double errorPercent(Mass wanted) {
    return 50 * step.ratioTo(wanted);
  }

  /** Whether that is enough for it: at least twenty steps. */
  public boolean canWeigh(Mass wanted) {
    return wanted.grams() >= LEAST_STEPS * step.grams() * (1 - ROUNDING);
  }

  /** What it will show, to the nearest step. */
  public Mass shown(Mass wanted) {
    double steps = Math.rint(wanted.ratioTo(step));
    return Mass.ofGrams(Math.rint(steps * step.grams() * 1e6) / 1e6);
  }
}
