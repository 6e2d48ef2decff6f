package org.wetside.core.run;

import java.util.List;
import org.wetside.core.process.Step;
import org.wetside.core.process.Timeline;

/**
 * What was planned when the run was opened; it never changes.
 *
 * @param steps in order, each with its time known
 * @param checks ids of what is to be ticked before the first pour
 */
public record RunPlan(List<Step> steps, List<String> checks) {
  public RunPlan {
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    Timeline.of(steps);
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
