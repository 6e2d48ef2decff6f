package org.wetside.web.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;
import org.wetside.core.thermal.TimedReading;
import org.wetside.web.mixing.DriftQuery;
import org.wetside.web.mixing.DriftView;

/** Where a bath of a run was going, by the readings its record holds. */
public final class RunDrift {
  private RunDrift() {}

  /**
   * The drift of one step's readings in the tank, counted from the first of them.
   *
   * @param step index of the step; null for the developer
   * @throws BadValueException when the run has no such step or too few readings of it
   */
  public static DriftView of(BenchSnapshot run, @Nullable String step, DriftQuery query) {
    return DriftView.of(new PredictDrift().answer(query.question(readings(run, index(run, step)))));
  }

  private static int index(BenchSnapshot run, @Nullable String step) {
    int steps = run.state().plan().steps().size();
    if (step == null || step.isBlank()) {
      for (int i = 0; i < steps; i++) {
        if (run.state().plan().step(i).kind() == StepKind.DEVELOPER) {
          return i;
        }
      }
      throw new BadValueException("step", "not said", "this run has no developer: say which step");
    }
    String limit = "a whole number from 0 to " + (steps - 1);
    try {
      int index = Integer.parseInt(step.strip());
      if (index >= 0 && index < steps) {
        return index;
      }
    } catch (NumberFormatException notOne) {
      throw new BadValueException("step", step, limit);
    }
    throw new BadValueException("step", step, limit);
  }

  private static List<TimedReading> readings(BenchSnapshot run, int step) {
    List<TimedReading> readings = new ArrayList<>();
    Instant first = null;
    Instant full = run.moments().steps().get(step).full();
    for (RunEvent event : run.state().applied()) {
      boolean inTank = event.step() == step && event.occurredAt().isAfter(full);
      if (inTank && event.what() instanceof Happening.ReadingTaken reading) {
        first = first == null ? event.occurredAt() : first;
        readings.add(
            new TimedReading(Duration.between(first, event.occurredAt()), reading.corrected()));
      }
    }
    return readings;
  }
}
