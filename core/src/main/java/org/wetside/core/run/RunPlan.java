package org.wetside.core.run;

import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Step;
import org.wetside.core.process.Timeline;

/**
 * What was planned when the run was opened; its steps never change.
 *
 * @param steps in order, each with its time known
 * @param checks ids of what is to be ticked or passed over before the first pour; empty for a run
 *     that has begun, where nothing is left to ask
 * @param dose what the development dose is reckoned from; empty when the developer's rate is not
 *     known
 */
public record RunPlan(List<Step> steps, List<String> checks, Optional<DoseBasis> dose) {
  public RunPlan {
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    Timeline.of(steps);
  }

  /** A plan whose development dose is not known. */
  public RunPlan(List<Step> steps, List<String> checks) {
    this(steps, checks, Optional.empty());
  }

  /** The same plan with what its dose is reckoned from. */
  public RunPlan withDose(Optional<DoseBasis> basis) {
    return new RunPlan(steps, checks, basis);
  }

  /** The same plan with other checks before the first pour. */
  public RunPlan withChecks(List<String> others) {
    return new RunPlan(steps, others, dose);
  }

  /** The step at an index. */
  public Step step(int index) {
    return steps.get(index);
  }

  /** Whether the index is one of the steps. */
  public boolean has(int index) {
    return index >= 0 && index < steps.size();
  }
}
