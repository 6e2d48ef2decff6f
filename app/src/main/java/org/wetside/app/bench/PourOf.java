package org.wetside.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.checks.Pour;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.Units;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunEvent;

/** What checks ask of a load or an opened run. */
final class PourOf {
  private PourOf() {}

  static Pour run(LiveRun run, Instant now) {
    return new Pour(
        run.card().id(),
        run.card().load(),
        run.card().tank(),
        run.card().developer(),
        run.card().dilution().label(),
        run.card().rolls().stream().map(RollInTank::number).toList(),
        run.state().plan().steps(),
        run.taken(),
        readings(run),
        now,
        Units.METRIC);
  }

  static Pour load(Load load, LoadSteps steps, Instant now, Units units) {
    return new Pour(
        0,
        Optional.of(load.id()),
        load.tank(),
        load.recipe().developer(),
        load.recipe().dilution().label(),
        load.numbers(),
        steps.steps(),
        steps.taken(),
        List.of(),
        now,
        units);
  }

  private static List<Pour.Read> readings(LiveRun run) {
    List<Pour.Read> readings = new ArrayList<>();
    for (RunEvent event : run.state().applied()) {
      if (event.what() instanceof Happening.ReadingTaken reading) {
        readings.add(
            new Pour.Read(event.step(), reading.raw(), reading.corrected(), reading.thermometer()));
      }
    }
    return readings;
  }
}
