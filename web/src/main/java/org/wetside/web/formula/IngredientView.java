package org.wetside.web.formula;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.HowTo;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.chemistry.Substance;
import org.wetside.core.chemistry.Weighing;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;
import org.wetside.reference.Bibliography;
import org.wetside.reference.Caution;
import org.wetside.web.mixing.CautionView;

/**
 * Something that is dissolved or poured in.
 *
 * @param step its place in the order of dissolving, from 1
 * @param name what goes in
 * @param specified as the formula writes it
 * @param grams what is to be weighed; null for what is poured
 * @param volumeMl what is to be measured; null for what is weighed
 * @param weighable whether the balance can weigh it: at least twenty of its steps; null for what is
 *     poured
 * @param shownGrams what the balance will show; null when it is not weighed directly
 * @param errorPercent half a step of the balance, or of the measure, of what is wanted
 * @param how what to do, in words
 * @param solution the percentage solution to make instead; null when none is
 * @param leastBatchMl the smallest batch that this balance will do for; null when it does
 * @param finerStepGrams the step of a balance that will do for this batch; null when this one does
 * @param measure in what it is measured; null for what is weighed
 * @param substitution by which factor it stands in; null when nothing is exchanged
 * @param gramsPerMole its molar mass; null when it has none of its own
 * @param dissolving how it dissolves; may be empty
 * @param dissolvingStanding how that is known; null when nothing is said
 * @param dissolvingSource where that is read; null when nothing is said
 * @param waterLowC coldest water it should go into; null when it does not matter
 * @param waterHighC warmest water it should go into; likewise
 * @param cautions for this moment; never empty
 * @param standing how the amount is known
 * @param source where the amount is printed
 * @param note limits of the reading; may be empty
 */
public record IngredientView(
    int step,
    String name,
    String specified,
    @Nullable Double grams,
    @Nullable Double volumeMl,
    @Nullable Boolean weighable,
    @Nullable Double shownGrams,
    @Nullable Double errorPercent,
    String how,
    @Nullable SolutionView solution,
    @Nullable Double leastBatchMl,
    @Nullable Double finerStepGrams,
    @Nullable MeasureView measure,
    @Nullable SubstitutionView substitution,
    @Nullable Double gramsPerMole,
    String dissolving,
    @Nullable String dissolvingStanding,
    @Nullable String dissolvingSource,
    @Nullable Double waterLowC,
    @Nullable Double waterHighC,
    List<CautionView> cautions,
    String standing,
    String source,
    String note) {

  static IngredientView of(PlannedStep planned, List<Caution> cautions, Bibliography sources) {
    FormulaStep step = planned.step();
    Optional<Weighing> weighing = planned.weighing();
    Optional<Weighing.Direct> direct = as(weighing, Weighing.Direct.class);
    Optional<Weighing.TooLittle> little = as(weighing, Weighing.TooLittle.class);
    Optional<Substance> goesIn = planned.substance();
    return new IngredientView(
        step.order(),
        planned.name(),
        step.ingredient(),
        planned.mass().map(Mass::grams).orElse(null),
        planned.volume().map(Volume::millilitres).orElse(null),
        weighing.map(Weighing::weighable).orElse(null),
        direct.map(one -> one.shown().grams()).orElse(null),
        error(planned),
        HowTo.of(planned),
        as(weighing, Weighing.AsSolution.class).map(SolutionView::of).orElse(null),
        little.map(one -> one.leastBatch().millilitres()).orElse(null),
        little.map(one -> one.finerStep().grams()).orElse(null),
        planned.reading().map(MeasureView::of).orElse(null),
        planned
            .exchange()
            .map(
                one ->
                    SubstitutionView.of(
                        one, planned.mass().map(mass -> mass.grams() / one.factor()), sources))
            .orElse(null),
        goesIn.flatMap(Substance::molarMass).map(one -> one.gramsPerMole()).orElse(null),
        goesIn.map(one -> one.form().advice()).orElse(""),
        goesIn.map(one -> one.form().standing().word()).orElse(null),
        goesIn.map(one -> one.form().citation().toString()).orElse(null),
        goesIn.flatMap(one -> one.form().water()).map(one -> one.low().celsius()).orElse(null),
        goesIn.flatMap(one -> one.form().water()).map(one -> one.high().celsius()).orElse(null),
        cautions.stream().map(CautionView::of).toList(),
        step.standing().word(),
        step.citation().toString(),
        step.note());
  }

  /** As the formula writes it, not weighed out. */
  static IngredientView shown(FormulaStep step, List<Caution> cautions) {
    return new IngredientView(
        step.order(),
        step.ingredient(),
        step.ingredient(),
        step.mass().map(Mass::grams).orElse(null),
        step.volume().map(Volume::millilitres).orElse(null),
        null,
        null,
        null,
        step.hasAmount() ? "" : "the amount is missing",
        null,
        null,
        null,
        null,
        null,
        step.substance().flatMap(Substance::molarMass).map(one -> one.gramsPerMole()).orElse(null),
        "",
        null,
        null,
        null,
        null,
        cautions.stream().map(CautionView::of).toList(),
        step.standing().word(),
        step.citation().toString(),
        step.note());
  }

  private static @Nullable Double error(PlannedStep planned) {
    Optional<Weighing> weighing = planned.weighing();
    if (weighing.isEmpty()) {
      return planned.reading().map(one -> one.errorPercent()).orElse(null);
    }
    if (weighing.get() instanceof Weighing.Direct direct) {
      return direct.errorPercent();
    }
    return weighing.get() instanceof Weighing.AsSolution solution
        ? (Double) solution.errorPercent()
        : (Double) ((Weighing.TooLittle) weighing.get()).errorPercent();
  }

  private static <T extends Weighing> Optional<T> as(Optional<Weighing> weighing, Class<T> type) {
    return weighing.filter(type::isInstance).map(type::cast);
  }
}
