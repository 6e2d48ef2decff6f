package org.wetside.web.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.trial.TrialStep;
import org.wetside.web.mixing.CautionView;

/**
 * One step of a test.
 *
 * @param number its place, from 1
 * @param moment before, start, wait, judge or after
 * @param text what is done
 * @param leftSeconds how long it is left; null where the eye decides
 * @param cautions for what is handled in it
 * @param standing how it is known
 * @param source where it was read
 * @param note limits; may be empty
 */
public record GuideStepView(
    int number,
    String moment,
    String text,
    @Nullable Double leftSeconds,
    List<CautionView> cautions,
    String standing,
    String source,
    String note) {
  static GuideStepView of(TrialStep step, List<CautionView> cautions) {
    return new GuideStepView(
        step.number(),
        step.moment().word(),
        step.words(),
        step.left().map(TimeSpan::toSeconds).orElse(null),
        cautions,
        step.standing().word(),
        step.citation().toString(),
        step.note());
  }
}
