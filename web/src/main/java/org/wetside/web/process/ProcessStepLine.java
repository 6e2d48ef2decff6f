package org.wetside.web.process;

import java.util.ArrayList;
import java.util.List;
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
 * @param agitation when the tank is moved, in one line
 * @param around how warm, in what light, when it is drained, where the liquid goes
 * @param standing how its values are known
 * @param source what they are cited from
 */
public record ProcessStepLine(
    String hatch,
    String heading,
    String bottle,
    String time,
    String agitation,
    String around,
    Standing standing,
    String source) {

  static ProcessStepLine of(Step step, Units units) {
    StepDraft typed = StepDraft.of(step);
    return new ProcessStepLine(
        Hatch.of(step.kind()),
        step.kind().heading(),
        typed.value(StepField.BOTTLE),
        typed.value(StepField.TIME),
        moved(typed.value(StepField.AGITATION)),
        around(step, units),
        step.standing(),
        step.source());
  }

  private static String moved(String agitation) {
    return agitation.equals("none") ? "not moved" : agitation;
  }

  private static String around(Step step, Units units) {
    List<String> words = new ArrayList<>();
    step.band().ifPresent(band -> words.add(units.words(band)));
    words.add(
        switch (step.light()) {
          case DARK -> "in the dark";
          case ANY -> "any light";
          case REQUIRED -> "light is needed";
        });
    if (step.kind().wet()) {
      if (!step.drainLead().isZero()) {
        words.add("drained " + StepDraft.of(step).value(StepField.DRAIN) + " before its end");
      }
      words.add(step.afterUse().bottle().map(to -> "back to bottle " + to).orElse("poured away"));
    }
    return String.join("; ", words);
  }
}
