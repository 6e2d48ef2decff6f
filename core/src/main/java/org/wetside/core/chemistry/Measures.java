package org.wetside.core.chemistry;

import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * The syringes and graduates at hand.
 *
 * @param all at least one
 */
public record Measures(List<Measure> all) {
  private static final double ROUNDING = 1e-9;

  /** Keeps an unmodifiable copy. */
  public Measures {
    all = List.copyOf(all);
    if (all.isEmpty()) {
      throw new BadValueException("measures", "none", "give at least one, for example 100mL/1mL");
    }
  }

  /**
   * A volume in a measure.
   *
   * @param measure the one to take
   * @param fillings how many times it is filled, at least 1
   * @param error half a division at each filling
   * @param errorPercent the same of what is wanted, percent
   */
  public record Reading(Measure measure, int fillings, Volume error, double errorPercent) {}

  /**
   * The measure to take: of those that hold it at once the finest, of the finest the smallest; when
   * none holds it, the largest, filled several times.
   *
   * @param wanted above 0
   */
  public Reading choose(Volume wanted) {
    Measure best = null;
    Measure largest = all.get(0);
    for (Measure one : all) {
      if (one.capacity().millilitres() >= wanted.millilitres() * (1 - ROUNDING)
          && (best == null || isFiner(one, best))) {
        best = one;
      }
      largest = one.capacity().compareTo(largest.capacity()) > 0 ? one : largest;
    }
    if (best != null) {
      return reading(best, 1, wanted);
    }
    int fillings = (int) Math.ceil(wanted.ratioTo(largest.capacity()) - ROUNDING);
    return reading(largest, fillings, wanted);
  }

  private static boolean isFiner(Measure one, Measure than) {
    int finer = one.division().compareTo(than.division());
    return finer < 0 || (finer == 0 && one.capacity().compareTo(than.capacity()) < 0);
  }

  private static Reading reading(Measure measure, int fillings, Volume wanted) {
    Volume error = measure.division().times(fillings / 2.0);
    return new Reading(measure, fillings, error, 100 * error.ratioTo(wanted));
  }
}
