package org.wetside.web.rolls;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Mark;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/**
 * A step of a run, as planned and as it happened.
 *
 * @param bath the step's bath
 * @param bottle letter of the bottle it came from; null for water or when none was said
 * @param takenMl what the step was planned to take from the bottle; null where no bottle was named
 * @param wentTo where the liquid went; empty for a step that was not reached
 * @param plannedSeconds how long it was to last
 * @param actualSeconds from the full tank to the next pour; null for a step that was not reached
 * @param beganAt when its pour began; null for a step that was not reached
 * @param known whether somebody pressed that moment or the plan supplied it; empty when not reached
 * @param standing how its planned time was known
 * @param source where that stands
 */
public record RunStepView(
    String bath,
    @Nullable String bottle,
    @Nullable Double takenMl,
    String wentTo,
    double plannedSeconds,
    @Nullable Double actualSeconds,
    @Nullable String beganAt,
    String known,
    String standing,
    String source) {
  static List<RunStepView> all(RunState state, List<Optional<Volume>> taken) {
    List<RunStepView> views = new ArrayList<>();
    Instant start = state.startedAt().orElse(Instant.EPOCH);
    Placement placed = Placement.of(state, start);
    for (int i = 0; i < state.steps().size(); i++) {
      Optional<Volume> drawn = i < taken.size() ? taken.get(i) : Optional.empty();
      views.add(of(state, placed, i, drawn));
    }
    return views;
  }

  private static RunStepView of(
      RunState state, Placement placed, int index, Optional<Volume> taken) {
    Step step = state.plan().step(index);
    boolean reached = index <= state.current();
    boolean over = reached && (index < state.current() || state.endedAt().isPresent());
    Placement.Moments moments = placed.steps().get(index);
    Instant end =
        state.phase() == Phase.ABANDONED && index == state.current()
            ? state.endedAt().orElse(moments.end())
            : moments.end();
    Duration lasted = Duration.between(moments.full(), end);
    return new RunStepView(
        step.kind().word(),
        step.bottle().orElse(null),
        taken.map(Volume::millilitres).orElse(null),
        over ? step.afterUse().words() : "",
        TimeSpan.toSeconds(step.duration().orElse(Duration.ZERO)),
        over ? TimeSpan.toSeconds(lasted.isNegative() ? Duration.ZERO : lasted) : null,
        reached ? moments.begin().toString() : null,
        reached
            ? state.steps().get(index).pour().map(Mark::how).map(Mark.Known::word).orElse("")
            : "",
        step.standing().word(),
        step.source());
  }
}
