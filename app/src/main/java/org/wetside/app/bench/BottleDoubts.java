package org.wetside.app.bench;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.Set;
import org.wetside.core.run.BottleMishaps;
import org.wetside.core.run.BottleMishaps.InDoubt;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.store.BottlesInRun;
import org.wetside.store.Session;

/**
 * What a mishap writes into the books of bottles, in the transaction that stores it; taking the
 * mishap back lifts it.
 */
final class BottleDoubts {
  private final BottlesInRun bottles;
  private final LiveRun after;

  BottleDoubts(Session session, LiveRun after) {
    bottles = new BottlesInRun(session);
    this.after = after;
  }

  void follow(RunState before, RunEvent event) {
    if (event.kind() != EventKind.MISHAP && event.kind() != EventKind.UNDONE) {
      return;
    }
    Set<InDoubt> was = BottleMishaps.of(before);
    Set<InDoubt> is = BottleMishaps.of(after.state());
    String run = Long.toString(after.card().id());
    Instant at = event.occurredAt();
    Instant since = before.startedAt().orElse(at);
    for (InDoubt one : without(is, was)) {
      bottles.mark(one.letter(), one.mark(), one.why(), run, since, at);
    }
    for (InDoubt one : without(was, is)) {
      bottles.unmark(one.letter(), one.mark(), "the mishap was taken back", run, since, at);
    }
  }

  private static Set<InDoubt> without(Set<InDoubt> all, Set<InDoubt> others) {
    Set<InDoubt> left = new LinkedHashSet<>(all);
    left.removeAll(others);
    return left;
  }
}
