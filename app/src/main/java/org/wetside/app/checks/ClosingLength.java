package org.wetside.app.checks;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Tank;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.store.PastRun;
import org.wetside.store.Runs;
import org.wetside.store.Session;
import org.wetside.store.Tanks;

/**
 * How much is asked when a tank is closed. A tank that has proved itself is asked only for what
 * loses film most; a tank that is new to the hands is asked for everything (common practice).
 */
final class ClosingLength {
  private static final int CLEAN_RUNS = 10;
  private static final int LOOKED_BACK = 40;
  private static final int MONTHS = 2;

  /** Mishaps that say the tank was not closed well, as the list of mishaps begins them. */
  private static final List<String> OF_THE_LID = List.of("lid ", "tank leaks");

  private ClosingLength() {}

  static Closing of(Session session, Pour pour) {
    Optional<Tank> tank = new Tanks(session).find(pour.tank());
    if (tank.isEmpty()) {
      return new Closing(
          ClosingItem.usual(Vessel.SMALL_TANK), true, "The tank is not written down.");
    }
    List<ClosingItem> own = new Tanks(session).checks(pour.tank());
    List<ClosingItem> items = own.isEmpty() ? ClosingItem.usual(tank.get().vessel()) : own;
    Optional<String> why = whyWhole(session, pour, tank.get());
    List<ClosingItem> few = items.stream().filter(ClosingItem::always).toList();
    if (why.isEmpty() && few.isEmpty()) {
      why = Optional.of("Nothing of this tank is marked as always asked.");
    }
    return why.map(reason -> new Closing(items, true, reason))
        .orElseGet(
            () -> new Closing(few, false, "Short after ten clean runs with " + pour.tank() + "."));
  }

  private static Optional<String> whyWhole(Session session, Pour pour, Tank tank) {
    Runs runs = new Runs(session);
    List<PastRun> last = runs.over(pour.run(), 1);
    if (last.isEmpty()) {
      return Optional.of("The first run.");
    }
    PastRun before = last.get(0);
    if (!before.tank().equalsIgnoreCase(pour.tank())) {
      return Optional.of("Another tank than last time.");
    }
    if (!before.described().equals(tank.described())) {
      return Optional.of("The tank was changed since last time.");
    }
    Instant longAgo = pour.now().atOffset(ZoneOffset.UTC).minusMonths(MONTHS).toInstant();
    if (before.endedAt().isBefore(longAgo)) {
      return Optional.of("Two months without use.");
    }
    long clean =
        cleanInARow(runs, runs.overIn(before.tank(), before.described(), pour.run(), LOOKED_BACK));
    return clean >= CLEAN_RUNS
        ? Optional.empty()
        : Optional.of(
            clean + " of ten clean runs with " + pour.tank() + " since it last gave trouble.");
  }

  /** A run that was given up without trouble of the lid says nothing about the tank. */
  private static long cleanInARow(Runs runs, List<PastRun> newestFirst) {
    long clean = 0;
    for (PastRun past : newestFirst) {
      RunState state = runs.state(past.id(), List.of());
      if (!closedWell(state)) {
        return clean;
      }
      clean += past.phase() == Phase.FINISHED ? 1 : 0;
      if (clean == CLEAN_RUNS) {
        return clean;
      }
    }
    return clean;
  }

  private static boolean closedWell(RunState state) {
    for (RunEvent event : state.applied()) {
      if (event.what() instanceof Happening.Mishap mishap
          && OF_THE_LID.stream().anyMatch(mishap.what()::startsWith)) {
        return false;
      }
      if (event.what() instanceof Happening.Started started && isPassedOver(started)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPassedOver(Happening.Started started) {
    return started.passedOver().stream()
        .anyMatch(passed -> CheckGroup.ofId(passed.id()) == CheckGroup.CLOSING);
  }
}
