package org.wetside.web.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.quantity.Volume;
import org.wetside.reference.Caution;
import org.wetside.web.mixing.CautionView;

/**
 * Water to begin with, or to make up the volume.
 *
 * @param step its place in the order, from 1
 * @param text as the formula writes it
 * @param volumeMl how much, or up to how much
 * @param toMake whether it is added up to that volume
 * @param lowC how warm at least; null when nothing is said
 * @param highC how warm at most; null when nothing is said
 * @param measure in what it is measured; null when it is only shown
 * @param cautions for hot water; may be empty
 */
public record WaterView(
    int step,
    String text,
    @Nullable Double volumeMl,
    boolean toMake,
    @Nullable Double lowC,
    @Nullable Double highC,
    @Nullable MeasureView measure,
    List<CautionView> cautions) {
  static WaterView of(PlannedStep planned, List<Caution> cautions) {
    return new WaterView(
        planned.step().order(),
        planned.step().ingredient(),
        planned.volume().map(Volume::millilitres).orElse(null),
        planned.step().kind() == FormulaStep.Kind.WATER_TO_MAKE,
        planned.water().map(one -> one.low().celsius()).orElse(null),
        planned.water().map(one -> one.high().celsius()).orElse(null),
        planned.reading().map(MeasureView::of).orElse(null),
        cautions.stream().map(CautionView::of).toList());
  }

  static WaterView shown(FormulaStep step) {
    return new WaterView(
        step.order(),
        step.ingredient(),
        step.volume().map(Volume::millilitres).orElse(null),
        step.kind() == FormulaStep.Kind.WATER_TO_MAKE,
        step.water().map(one -> one.low().celsius()).orElse(null),
        step.water().map(one -> one.high().celsius()).orElse(null),
        null,
        List.of());
  }
}
