package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;

/**
 * A process laid out in time, computed before anything is poured.
 *
 * @param steps in order; each begins where the one before ends
 */
public record Timeline(List<PlacedStep> steps) {
  public Timeline {
    steps = List.copyOf(steps);
  }

  /**
   * Lays the steps end to end.
   *
   * @throws BadValueException when a step has no time yet
   */
  public static Timeline of(List<Step> steps) {
    List<PlacedStep> placed = new ArrayList<>();
    Duration begin = Duration.ZERO;
    for (Step step : steps) {
      Duration time =
          step.duration()
              .orElseThrow(
                  () ->
                      new BadValueException(
                          step.kind().word() + " time",
                          "not given",
                          "say how long, for example 9:00"));
      Duration full = begin.plus(step.pourIn());
      Duration end = full.plus(time);
      placed.add(
          new PlacedStep(placed.size(), step, begin, full, end.minus(step.drainLead()), end));
      begin = end;
    }
    return new Timeline(placed);
  }

  /** From the first pour to the end of the last step. */
  public Duration length() {
    return steps.get(steps.size() - 1).end();
  }
}
