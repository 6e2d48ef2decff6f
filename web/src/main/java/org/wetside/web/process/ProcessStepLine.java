package org.wetside.web.process;

import org.wetside.app.process.StepDraft;
import org.wetside.app.process.StepField;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Units;
import org.wetside.core.source.Standing;
import org.wetside.web.page.Hatch;

/**
 * One step on the page of a process.
 *
 * @param hatch of its bath
 * @param heading what it does
 * @param bottle letter; empty for water and light
 * @param time how long; empty where the load says it
 * @param temperature the band it may have; empty when it is not stated
 * @param agitation the whole schedule in one line
 * @param afterwards where the liquid goes
 * @param light what light the film may see
 * @param standing how its values are known
 * @param source what they are cited from
 */
public record ProcessStepLine(
    String hatch,
    String heading,
    String bottle,
    String time,
    String temperature,
    String agitation,
    String afterwards,
    String light,
    Standing standing,
    String source) {

  static ProcessStepLine of(Step step, Units units) {
    StepDraft typed = StepDraft.of(step);
    return new ProcessStepLine(
        Hatch.of(step.kind()),
        step.kind().heading(),
        typed.value(StepField.BOTTLE),
        typed.value(StepField.TIME),
        step.band()
            .map(band -> units.words(band.low()) + " to " + units.words(band.high()))
            .orElse(""),
        typed.value(StepField.AGITATION),
        typed.value(StepField.AFTERWARDS),
        typed.value(StepField.LIGHT),
        step.standing(),
        step.source());
  }
}
