package org.wetside.core.run;

import java.util.List;
import org.wetside.core.process.Step;
import org.wetside.core.process.Timeline;

/**
 * What was planned when the run was opened; its steps never change.
 *
 * @param steps in order, each with its time known
 * @param checks ids of what is to be ticked or passed over before the first pour; empty for a run
 *     that has begun, where nothing is left to ask
 */
public record RunPlan(List<Step> steps, List<String> checks) {
  public RunPlan {
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    Timeline.of(steps);
  }

  /** The same plan with other checks before the first pour. */
  public RunPlan withChecks(List<String> others) {
    return new RunPlan(steps, others);
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
