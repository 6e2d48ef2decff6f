package org.wetside.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.hands.Attention;
import org.wetside.core.hands.AttentionWindow;
import org.wetside.core.hands.Clash;
import org.wetside.core.hands.FreeHands;
import org.wetside.core.hands.Lengthening;
import org.wetside.core.hands.Repair;
import org.wetside.core.hands.StartAdvice;
import org.wetside.core.hands.StartMoment;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Phase;

/** Two tanks and one pair of hands: what of the runs at the Bench gives way to what. */
final class BothTanks {
  /** After these a run stands elsewhere than it did. */
  private static final Set<EventKind> SHIFTS =
      EnumSet.of(
          EventKind.STARTED,
          EventKind.STEP_BEGUN,
          EventKind.STEP_DRAINED,
          EventKind.LENGTHENED,
          EventKind.CUT_SHORT,
          EventKind.READING_TAKEN,
          EventKind.MISHAP,
          EventKind.UNDONE);

  private BothTanks() {}

  /**
   * One step that is made longer.
   *
   * @param run which run gives way
   * @param step index of its step
   * @param what the lengthening with its reason
   */
  record GivesWay(long run, int step, Happening what) {}

  static boolean shifts(EventKind kind) {
    return SHIFTS.contains(kind);
  }

  /** What gives way after a run has shifted: itself where it can, else the others. */
  static List<GivesWay> after(LiveRun shifted, Collection<LiveRun> all, Instant now) {
    List<GivesWay> moves = new ArrayList<>();
    for (LiveRun other : others(shifted, all)) {
      Repair own = repair(shifted, other, now);
      if (own.clashes().isEmpty()) {
        moves.addAll(ways(shifted, other, own));
        continue;
      }
      Repair theirs = repair(other, shifted, now);
      boolean othersMove = theirs.betterThan(own);
      moves.addAll(othersMove ? ways(other, shifted, theirs) : ways(shifted, other, own));
    }
    return moves;
  }

  /** The first moment at which two tanks want the hands, whatever was made longer. */
  static Optional<Clash> nextClash(LiveRun run, Collection<LiveRun> all, Instant now) {
    return others(run, all).stream()
        .flatMap(other -> Clash.between(windows(run, now), windows(other, now)).stream().limit(1))
        .min(Comparator.comparing(Clash::at));
  }

  /** When a run that is ready is best begun; empty when nothing else is going on. */
  static Optional<StartAdvice> startOf(LiveRun ready, Collection<LiveRun> all, Instant now) {
    List<AttentionWindow> busy =
        others(ready, all).stream().flatMap(other -> windows(other, now).stream()).toList();
    return busy.isEmpty() || ready.state().phase() != Phase.READY
        ? Optional.empty()
        : Optional.of(StartMoment.of(ready.card().tank(), ready.state(), busy, now));
  }

  /** The names of the other tanks, also of those that are still to be poured into. */
  static List<String> namesBeside(LiveRun run, Collection<LiveRun> all) {
    return all.stream()
        .filter(other -> other.card().id() != run.card().id())
        .filter(other -> !other.state().phase().over())
        .map(other -> other.card().tank())
        .distinct()
        .sorted()
        .toList();
  }

  private static List<LiveRun> others(LiveRun run, Collection<LiveRun> all) {
    return all.stream()
        .filter(other -> other.card().id() != run.card().id())
        .filter(
            other ->
                other.state().phase() == Phase.RUNNING || other.state().phase() == Phase.WAITING)
        .toList();
  }

  private static Repair repair(LiveRun moved, LiveRun fixed, Instant now) {
    return FreeHands.of(moved.card().tank(), moved.state(), windows(fixed, now), now, now);
  }

  private static List<AttentionWindow> windows(LiveRun run, Instant now) {
    return Attention.after(now, Attention.of(run.card().tank(), run.state(), now));
  }

  private static List<GivesWay> ways(LiveRun run, LiveRun other, Repair repair) {
    String reason = "so that both hands are free for " + other.card().tank();
    List<GivesWay> ways = new ArrayList<>();
    for (Lengthening move : repair.moves()) {
      ways.add(
          new GivesWay(run.card().id(), move.step(), new Happening.Lengthened(move.by(), reason)));
    }
    return ways;
  }
}
