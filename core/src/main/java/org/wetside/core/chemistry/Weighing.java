package org.wetside.core.chemistry;

import java.util.Optional;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;

/** How something is best weighed on the balance at hand. */
public sealed interface Weighing {
  /** Whether it is weighed as it is. */
  default boolean weighable() {
    return this instanceof Direct;
  }

  /**
   * Weighed as it is.
   *
   * @param shown what the balance will show
   * @param errorPercent half a step of what is wanted, percent
   */
  record Direct(Mass shown, double errorPercent) implements Weighing {}

  /**
   * Too little: a percentage solution is made of more, and a volume of that taken.
   *
   * @param strength grams in 100 mL, and whose choice that is
   * @param dissolve grams for the solution
   * @param makes what they are made up to
   * @param take how much of it holds what is wanted
   * @param reading in what that is measured
   * @param errorPercent half a step of what would be weighed directly, percent
   */
  record AsSolution(
      SolutionStrength strength,
      Mass dissolve,
      Volume makes,
      Volume take,
      Measures.Reading reading,
      double errorPercent)
      implements Weighing {}

  /**
   * Too little, and not to be kept in solution.
   *
   * @param leastBatch the smallest batch for which this balance will do
   * @param finerStep the step of a balance that will do for this batch, a power of ten
   * @param errorPercent half a step of what is wanted, percent
   */
  record TooLittle(Volume leastBatch, Mass finerStep, double errorPercent) implements Weighing {}

  /**
   * The way to weigh it.
   *
   * @param wanted above 0
   * @param batch volume it is for
   * @param solution strength at which it is kept in solution; empty when it is not
   */
  static Weighing of(
      Mass wanted,
      Volume batch,
      Optional<SolutionStrength> solution,
      Balance balance,
      Measures measures) {
    double error = balance.errorPercent(wanted);
    if (balance.canWeigh(wanted)) {
      return new Direct(balance.shown(wanted), error);
    }
    if (solution.isPresent()) {
      double percent = solution.get().percent();
      Volume take = Volume.ofMillilitres(100 * wanted.grams() / percent);
      for (int millilitres : new int[] {50, 100, 250, 500, 1000}) {
        Volume makes = Volume.ofMillilitres(millilitres);
        Mass dissolve = Mass.ofGrams(percent * millilitres / 100);
        boolean small = take.compareTo(batch.times(0.25)) <= 0;
        if (small && balance.canWeigh(dissolve) && take.compareTo(makes) <= 0) {
          return new AsSolution(
              solution.get(), dissolve, makes, take, measures.choose(take), error);
        }
      }
    }
    double least = batch.millilitres() * Balance.LEAST_STEPS / wanted.ratioTo(balance.step());
    return new TooLittle(
        Volume.ofMillilitres(Math.ceil(least * 1e6 - 1e-3) / 1e6),
        Mass.ofGrams(
            Math.pow(10, Math.floor(Math.log10(wanted.grams() / Balance.LEAST_STEPS) + 1e-9))),
        error);
  }
}
