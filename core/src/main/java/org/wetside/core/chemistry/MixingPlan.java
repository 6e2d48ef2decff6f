package org.wetside.core.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;

/**
 * What to weigh and measure for one batch of a formula, in order of dissolving.
 *
 * @param formula what is mixed
 * @param total the volume made
 * @param steps in order
 */
public record MixingPlan(Formula formula, Volume total, List<PlannedStep> steps) {
  private static final Volume LEAST = Volume.ofMillilitres(10);
  private static final Volume MOST = Volume.ofLitres(100);

  /** Keeps an unmodifiable copy. */
  public MixingPlan {
    steps = List.copyOf(steps);
  }

  /**
   * Plans a batch.
   *
   * @param total from 10 mL to 100 L
   * @param held what is to stand in for ingredients
   * @throws BadValueException when the formula cannot be mixed, the volume is impossible, or what
   *     is held stands in for nothing in it
   */
  public static MixingPlan of(
      Formula formula,
      Volume total,
      List<Substance> held,
      Exchanges exchanges,
      Balance balance,
      Measures measures) {
    Optional<String> refusal = formula.refusal();
    if (refusal.isPresent()) {
      throw new BadValueException("formula to mix", formula.code(), refusal.get());
    }
    if (total.compareTo(LEAST) < 0 || total.compareTo(MOST) > 0) {
      throw new BadValueException(
          "volume to make", total.toString(), "it must be from 10 mL to 100 L");
    }
    Cupboard cupboard = new Cupboard(formula, held, exchanges);
    double scale = total.ratioTo(formula.basis().orElseThrow());
    List<PlannedStep> steps = new ArrayList<>();
    for (FormulaStep step : formula.steps()) {
      steps.add(planned(step, scale, total, cupboard.exchange(step), balance, measures));
    }
    return new MixingPlan(formula, total, withWater(formula, steps, measures));
  }

  private static PlannedStep planned(
      FormulaStep step,
      double scale,
      Volume total,
      Optional<Exchange.Allowed> exchange,
      Balance balance,
      Measures measures) {
    double factor = scale * exchange.map(Exchange.Allowed::factor).orElse(1.0);
    Optional<Substance> goesIn = exchange.map(Exchange.Allowed::held).or(step::substance);
    Optional<Mass> mass = step.mass().map(one -> one.times(factor));
    Optional<Volume> volume = step.volume().map(one -> one.times(factor));
    return new PlannedStep(
        step,
        goesIn,
        exchange,
        mass,
        volume,
        mass.map(
            one -> Weighing.of(one, total, goesIn.flatMap(Substance::solution), balance, measures)),
        volume.map(measures::choose),
        step.water());
  }

  /**
   * The first water warm enough for what comes into it first, and so much less as comes with
   * percentage solutions.
   */
  private static List<PlannedStep> withWater(
      Formula formula, List<PlannedStep> steps, Measures measures) {
    double solutions =
        steps.stream()
            .flatMap(one -> one.weighing().stream())
            .filter(Weighing.AsSolution.class::isInstance)
            .mapToDouble(one -> ((Weighing.AsSolution) one).take().millilitres())
            .sum();
    List<PlannedStep> all = new ArrayList<>();
    boolean first = true;
    for (PlannedStep one : steps) {
      boolean begins = first && one.step().kind() == FormulaStep.Kind.WATER;
      all.add(begins ? begun(one, solutions, warmth(one, steps), measures, formula) : one);
      first = first && !begins;
    }
    return all;
  }

  private static Optional<TemperatureRange> warmth(PlannedStep water, List<PlannedStep> steps) {
    return water
        .step()
        .water()
        .or(
            () ->
                steps.stream()
                    .flatMap(one -> one.substance().stream())
                    .flatMap(one -> one.form().water().stream())
                    .findFirst());
  }

  private static PlannedStep begun(
      PlannedStep one,
      double solutions,
      Optional<TemperatureRange> warmth,
      Measures measures,
      Formula formula) {
    boolean madeUp =
        formula.steps().stream().anyMatch(s -> s.kind() == FormulaStep.Kind.WATER_TO_MAKE);
    Volume printed = one.volume().orElseThrow();
    double less = madeUp ? Math.min(solutions, printed.millilitres() / 2) : 0;
    Volume volume = Volume.ofMillilitres(printed.millilitres() - less);
    return new PlannedStep(
        one.step(),
        one.substance(),
        one.exchange(),
        one.mass(),
        Optional.of(volume),
        one.weighing(),
        Optional.of(measures.choose(volume)),
        warmth);
  }
}
