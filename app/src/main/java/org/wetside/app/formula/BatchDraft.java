package org.wetside.app.formula;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.MixingPlan;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.chemistry.Substance;
import org.wetside.core.chemistry.Weighing;

/** A plan as the steps that somebody ticks off. */
final class BatchDraft {
  /** Stands in the files for what no single source says. */
  private static final String NO_SINGLE_SOURCE = "TRADE";

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
        name(step) + solution.map(one -> HowTo.solution(one.strength().percent())).orElse(""),
        solution.isPresent() ? Optional.empty() : step.mass(),
        solution.map(Weighing.AsSolution::take).or(step::volume),
        how(step),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Water says how warm it is to be, so that the batch knows it when the plan is gone. */
  private static String name(PlannedStep step) {
    boolean water = step.step().kind() == FormulaStep.Kind.WATER;
    return water && step.water().isPresent()
        ? "water at " + HowTo.celsius(step.water().get())
        : step.name();
  }

  private static String how(PlannedStep step) {
    String how = HowTo.of(step);
    String dissolving =
        step.substance()
            .map(Substance::form)
            .filter(form -> !form.advice().isEmpty())
            .map(
                form ->
                    form.water().map(one -> "into water of " + HowTo.celsius(one) + "; ").orElse("")
                        + form.advice()
                        + " ("
                        + form.standing().word()
                        + (form.citation().sourceId().equals(NO_SINGLE_SOURCE)
                            ? ""
                            : ", " + form.citation())
                        + ")")
            .orElse("");
    return how.isEmpty() || dissolving.isEmpty() ? how + dissolving : how + "; " + dissolving;
  }
}
