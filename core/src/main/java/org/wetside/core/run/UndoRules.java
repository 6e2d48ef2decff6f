package org.wetside.core.run;

import java.time.Duration;
import java.util.Optional;

/** Whether an event may be taken back. */
public final class UndoRules {
  /** An event can be taken back for this long. */
  public static final Duration WITHIN = Duration.ofSeconds(30);

  private UndoRules() {}

  static Outcome undone(RunState state, RunEvent event, Happening.Undone undone) {
    Optional<RunEvent> target = lastOf(state, event.screen());
    if (target.isEmpty() || !target.get().id().equals(undone.eventId())) {
      return new Outcome.Refused(
          "only the last thing done on this screen can be taken back"
              + (target.isEmpty() ? ": there is none" : ""));
    }
    Duration since = Duration.between(target.get().occurredAt(), event.occurredAt());
    return since.compareTo(WITHIN) <= 0
        ? new Outcome.Applied()
        : new Outcome.Refused(
            "it happened " + Spoken.clock(since) + " ago; it can be taken back for 0:30");
  }

  /**
   * The event a screen may take back: its own last one. The end that the plan wrote belongs to
   * every screen.
   */
  public static Optional<RunEvent> lastOf(RunState state, String screen) {
    for (int i = state.events().size() - 1; i >= 0; i--) {
      RunEvent event = state.events().get(i);
      boolean own = event.screen().equals(screen) && event.kind() != EventKind.UNDONE;
      boolean endByPlan = event.kind() == EventKind.FINISHED && event.what().planned();
      boolean stands =
          !state.takenBack().contains(event.id()) && !state.notedBecause().containsKey(event.id());
      if (stands && (own || endByPlan)) {
        return Optional.of(event);
      }
    }
    return Optional.empty();
  }
}
