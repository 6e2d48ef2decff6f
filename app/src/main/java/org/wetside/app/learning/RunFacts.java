package org.wetside.app.learning;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.app.drawer.RollRecord;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunDose;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/**
 * What the record of a run says of the development of a roll.
 *
 * @param ran the run
 * @param developer index of its developer among the steps
 */
record RunFacts(RollRecord.Ran ran, int developer) {
  /** The last run of a roll in which a developer was poured and the run is over. */
  static Optional<RunFacts> of(RollRecord record) {
    for (RollRecord.Ran ran : record.runs()) {
      RunState state = ran.state();
      if (state.endedAt().isEmpty()) {
        continue;
      }
      for (int i = 0; i <= state.current(); i++) {
        if (state.plan().step(i).kind() == StepKind.DEVELOPER) {
          return Optional.of(new RunFacts(ran, i));
        }
      }
    }
    return Optional.empty();
  }

  Instant endedAt() {
    return ran.state().endedAt().orElseThrow();
  }

  /** What the development is worth at the planned temperature; as it lasted where nobody read. */
  Optional<Duration> lasted() {
    RunState state = ran.state();
    boolean over = developer < state.current();
    if (!over) {
      return Optional.empty();
    }
    Placement.Moments moments =
        Placement.of(state, state.startedAt().orElseThrow()).steps().get(developer);
    Duration lasted = Duration.between(moments.full(), moments.end());
    Duration worth = RunDose.of(state, developer).map(dose -> dose.reached(lasted)).orElse(lasted);
    return Optional.of(worth).filter(one -> one.toMillis() > 0);
  }

  List<Step> steps() {
    return ran.state().plan().steps();
  }

  /** The thermometer that the developer was last read with; empty when none was named. */
  String thermometer() {
    String named = "";
    for (RunEvent event : ran.state().applied()) {
      if (event.what() instanceof Happening.ReadingTaken reading
          && event.step() == developer
          && !reading.thermometer().isBlank()) {
        named = reading.thermometer().strip();
      }
    }
    return named;
  }

  /** Letter of the bottle of developer; empty when none was named. */
  Optional<String> bottle() {
    return steps().get(developer).bottle();
  }
}
