package org.wetside.app.formula;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.chemistry.MixingPlan;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.chemistry.Weighing;

/** A plan as the steps that somebody ticks off. */
final class BatchDraft {
  private BatchDraft() {}

  static Batch of(WeighOut.Answer answer, Instant now) {
    MixingPlan plan = answer.plan().orElseThrow();
    List<Batch.Step> steps = new ArrayList<>();
    for (PlannedStep step : plan.steps()) {
      steps.add(step(step, steps.size() + 1));
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

  /** What goes in as a percentage solution is measured and not weighed. */
  private static Batch.Step step(PlannedStep step, int position) {
    Optional<Weighing.AsSolution> solution =
        step.weighing()
            .filter(Weighing.AsSolution.class::isInstance)
            .map(Weighing.AsSolution.class::cast);
    return new Batch.Step(
        position,
        step.name() + solution.map(one -> HowTo.solution(one.percent())).orElse(""),
        solution.isPresent() ? Optional.empty() : step.mass(),
        solution.map(Weighing.AsSolution::take).or(step::volume),
        HowTo.of(step),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
