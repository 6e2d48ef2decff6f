package org.wetside.core.run;

import static org.wetside.core.run.Phase.ABANDONED;
import static org.wetside.core.run.Phase.FINISHED;
import static org.wetside.core.run.Phase.READY;
import static org.wetside.core.run.Phase.RUNNING;
import static org.wetside.core.run.Phase.WAITING;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * The one table of which event is allowed in which phase. What else an event must satisfy (limits,
 * steps already past) is judged after it.
 */
public final class Transitions {
  private static final Map<EventKind, Set<Phase>> ALLOWED = new EnumMap<>(EventKind.class);

  static {
    allow(EventKind.STARTED, READY);
    allow(EventKind.STEP_BEGUN, RUNNING, WAITING);
    allow(EventKind.STEP_DRAINED, RUNNING, WAITING);
    allow(EventKind.LENGTHENED, RUNNING);
    allow(EventKind.CUT_SHORT, RUNNING);
    allow(EventKind.WAITING_BEGUN, RUNNING);
    allow(EventKind.WAIT_ASKED, READY, RUNNING, WAITING);
    allow(EventKind.WAIT_WITHDRAWN, READY, RUNNING, WAITING);
    allow(EventKind.READING_TAKEN, READY, RUNNING, WAITING);
    allow(EventKind.CUE_MISSED, RUNNING, WAITING);
    allow(EventKind.MISHAP, RUNNING, WAITING);
    allow(EventKind.NOTE, READY, RUNNING, WAITING, FINISHED, ABANDONED);
    allow(EventKind.GAP, RUNNING, WAITING);
    // After the end only within UNDO_WITHIN of it; that moment is judged with the event.
    allow(EventKind.UNDONE, READY, RUNNING, WAITING, FINISHED, ABANDONED);
    allow(EventKind.FINISHED, RUNNING, WAITING);
    allow(EventKind.ABANDONED, READY, RUNNING, WAITING);
  }

  private Transitions() {}

  private static void allow(EventKind kind, Phase first, Phase... more) {
    ALLOWED.put(kind, Collections.unmodifiableSet(EnumSet.of(first, more)));
  }

  /** Whether an event of this kind is allowed in this phase. */
  public static boolean allows(Phase phase, EventKind kind) {
    Set<Phase> phases = ALLOWED.get(kind);
    return phases != null && phases.contains(phase);
  }
}
