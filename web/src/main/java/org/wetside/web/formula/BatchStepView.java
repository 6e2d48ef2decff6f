package org.wetside.web.formula;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.StepWords;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;

/**
 * One step of a batch.
 *
 * @param step from 1
 * @param ingredient what goes in
 * @param grams planned; null for what is poured
 * @param volumeMl planned; null for what is weighed
 * @param how what to do, in words
 * @param weighedGrams what really went in; null until it did, and for what is poured
 * @param measuredMl what really went in; null until it did, and for what is weighed
 * @param offPercent how far that is from the plan; null until it is done
 * @param doneAt when; null until then
 * @param cautions for this moment; empty for water that does not scald
 */
public record BatchStepView(
    int step,
    String ingredient,
    @Nullable Double grams,
    @Nullable Double volumeMl,
    String how,
    @Nullable Double weighedGrams,
    @Nullable Double measuredMl,
    @Nullable Double offPercent,
    @Nullable String doneAt,
    List<CautionView> cautions) {
  static BatchStepView of(Batch.Step step, Cautions cautions) {
    return new BatchStepView(
        step.position(),
        step.ingredient(),
        step.mass().map(Mass::grams).orElse(null),
        step.volume().map(Volume::millilitres).orElse(null),
        step.how(),
        step.weighed().map(Mass::grams).orElse(null),
        step.measured().map(Volume::millilitres).orElse(null),
        step.isDone() ? step.offPercent() : null,
        step.doneAt().map(Instant::toString).orElse(null),
        cautions(step.ingredient(), cautions).stream().map(CautionView::of).toList());
  }

  /** Water is cautioned about when it scalds. */
  private static List<Caution> cautions(String ingredient, Cautions cautions) {
    if (StepWords.kind(ingredient) == FormulaStep.Kind.INGREDIENT) {
      return cautions.of(ingredient);
    }
    return StepWords.warmth(ingredient)
        .filter(band -> band.high().celsius() > WeighOut.SCALDING_CELSIUS)
        .map(band -> List.of(cautions.ofHotWater()))
        .orElse(List.of());
  }
}
