package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays an agitation schedule into the time between tank full and drain. */
public final class Bouts {
  private Bouts() {}

  /**
   * All bouts of a step in order. None runs into the drain: a cycle that would is dropped, the
   * initial bout is cut to what fits.
   *
   * @param schedule when the tank is moved
   * @param untilDrain from tank full to the beginning of the drain
   */
  public static List<Bout> of(AgitationSchedule schedule, Duration untilDrain) {
    List<Bout> bouts = new ArrayList<>();
    if (untilDrain.isZero() || untilDrain.isNegative()) {
      return bouts;
    }
    if (schedule.manner().withoutRest()) {
      bouts.add(new Bout(Duration.ZERO, untilDrain, 0, false));
      return bouts;
    }
    schedule.initial().flatMap(first -> fitted(first, untilDrain)).ifPresent(bouts::add);
    schedule.cycle().ifPresent(cycle -> addCycles(schedule, cycle, untilDrain, bouts));
    return bouts;
  }

  private static Optional<Bout> fitted(Cycle first, Duration untilDrain) {
    if (first.length().compareTo(untilDrain) <= 0) {
      return Optional.of(new Bout(Duration.ZERO, first.length(), first.count(), first.counted()));
    }
    int count = (int) (first.count() * untilDrain.toMillis() / first.length().toMillis());
    if (count < 1) {
      return Optional.empty();
    }
    Duration length =
        first.counted() ? first.length().multipliedBy(count).dividedBy(first.count()) : untilDrain;
    return Optional.of(new Bout(Duration.ZERO, length, count, first.counted()));
  }

  private static void addCycles(
      AgitationSchedule schedule, Cycle cycle, Duration untilDrain, List<Bout> bouts) {
    Duration initialEnd = bouts.isEmpty() ? Duration.ZERO : bouts.get(0).end();
    Duration interval =
        schedule.manner() == Manner.SEMI_STAND ? untilDrain.dividedBy(2) : schedule.interval();
    if (interval.isZero() || schedule.manner() == Manner.STAND) {
      return;
    }
    int most = schedule.manner() == Manner.SEMI_STAND ? 1 : Integer.MAX_VALUE;
    for (int n = 1; n <= most; n++) {
      Duration start = interval.multipliedBy(n);
      if (start.plus(cycle.length()).compareTo(untilDrain) > 0) {
        return;
      }
      // One that touches the initial bout would only make that longer.
      if (start.compareTo(initialEnd) > 0) {
        bouts.add(new Bout(start, cycle.length(), cycle.count(), cycle.counted()));
      }
    }
  }
}
