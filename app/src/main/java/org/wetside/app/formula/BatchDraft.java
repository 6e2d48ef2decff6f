package org.wetside.app.formula;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.chemistry.MixingPlan;
import org.wetside.core.chemistry.PlannedStep;

/** A plan as the steps that somebody ticks off. */
final class BatchDraft {
  private BatchDraft() {}

  static Batch of(WeighOut.Answer answer, Instant now) {
    MixingPlan plan = answer.plan().orElseThrow();
    List<Batch.Step> steps = new ArrayList<>();
    for (PlannedStep step : plan.steps()) {
      steps.add(
          new Batch.Step(
              steps.size() + 1,
              step.name(),
              step.mass(),
              step.volume(),
              HowTo.of(step),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
    }
    return new Batch(
        0,
        plan.formula().code(),
        plan.formula().name(),
        plan.formula().kind(),
        plan.total(),
        answer.balance(),
        plan.formula().standing(),
        now,
        Optional.empty(),
        steps);
  }
}
