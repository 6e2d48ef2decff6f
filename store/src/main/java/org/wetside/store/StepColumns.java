package org.wetside.store;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cycle;
import org.wetside.core.process.Light;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Standing;

/** A step as columns; the steps of a run and those of a process are kept alike. */
final class StepColumns {
  /** The columns, in the order of {@link #values}. */
  static final String NAMES =
      "kind, bottle, duration_ms, pour_in_ms, drain_lead_ms, manner, initial_count, initial_ms,"
          + " initial_counted, interval_ms, cycle_count, cycle_ms, cycle_counted, tap,"
          + " revolutions_per_minute, band_low_c, band_high_c, back_to, light, lengthen_to_ms,"
          + " standing, source";

  private StepColumns() {}

  /** The values, behind those of the columns that come first in the statement. */
  static Object[] values(Step step, Object... first) {
    AgitationSchedule agitation = step.agitation();
    List<Object> values = new ArrayList<>(List.of(first));
    values.add(step.kind().word());
    values.add(step.bottle());
    values.add(step.duration());
    values.add(step.pourIn());
    values.add(step.drainLead());
    values.add(agitation.manner().word());
    addCycle(values, agitation.initial());
    values.add(agitation.interval());
    addCycle(values, agitation.cycle());
    values.add(agitation.tap());
    values.add(agitation.revolutionsPerMinute());
    values.add(step.band().map(TemperatureRange::low));
    values.add(step.band().map(TemperatureRange::high));
    values.add(step.afterUse().bottle());
    values.add(step.light().word());
    values.add(step.lengthenTo());
    values.add(step.standing().word());
    values.add(step.source());
    return values.toArray();
  }

  /** Question marks for as many columns, with some more in front. */
  static String marks(int first) {
    return "?" + ", ?".repeat(first + NAMES.split(",", -1).length - 1);
  }

  static Step read(Row row) {
    return new Step(
        StepKind.fromWord(row.text("kind")),
        row.maybeText("bottle"),
        row.maybeDuration("duration_ms"),
        row.duration("pour_in_ms"),
        row.duration("drain_lead_ms"),
        new AgitationSchedule(
            Manner.fromWord(row.text("manner")),
            cycle(row, "initial"),
            row.duration("interval_ms"),
            cycle(row, "cycle"),
            row.yes("tap"),
            row.number("revolutions_per_minute")),
        row.maybeTemperature("band_low_c")
            .flatMap(
                low ->
                    row.maybeTemperature("band_high_c")
                        .map(high -> new TemperatureRange(low, high))),
        new AfterUse(row.maybeText("back_to")),
        Light.fromWord(row.text("light")),
        row.maybeDuration("lengthen_to_ms"),
        Standing.fromWord(row.text("standing")),
        row.text("source"));
  }

  private static void addCycle(List<Object> values, Optional<Cycle> cycle) {
    values.add(cycle.map(Cycle::count));
    values.add(cycle.map(Cycle::length));
    values.add(cycle.map(Cycle::counted));
  }

  private static Optional<Cycle> cycle(Row row, String which) {
    Optional<Duration> length = row.maybeDuration(which + "_ms");
    return length.map(
        time -> new Cycle((int) row.whole(which + "_count"), time, row.yes(which + "_counted")));
  }
}
