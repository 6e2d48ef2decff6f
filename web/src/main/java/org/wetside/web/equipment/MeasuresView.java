package org.wetside.web.equipment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;

/**
 * What is weighed and measured with.
 *
 * @param balanceStepGrams the smallest step the balance shows, or null when nobody has said
 * @param measures syringes and graduates, the smallest first; empty when none is written down
 */
public record MeasuresView(@Nullable Double balanceStepGrams, List<OwnMeasureView> measures) {
  /** All of a home. */
  public static MeasuresView of(Wetside wetside) {
    return new MeasuresView(
        wetside.keepMeasures().balance().map(one -> one.step().grams()).orElse(null),
        wetside.keepMeasures().all().stream().map(OwnMeasureView::of).toList());
  }
}
