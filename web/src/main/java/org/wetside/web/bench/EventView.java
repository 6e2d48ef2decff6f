package org.wetside.web.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.core.run.UndoRules;

/** A stored event in words. */
public record EventView(
    String id,
    long sequence,
    String kind,
    int step,
    String occurredAt,
    String screen,
    boolean applied,
    String words,
    @Nullable String mayUndoUntil) {

  static List<EventView> all(BenchSnapshot at) {
    return at.state().events().stream().map(event -> of(at.state(), event)).toList();
  }

  private static EventView of(RunState state, RunEvent event) {
    boolean stands =
        !state.notedBecause().containsKey(event.id()) && !state.takenBack().contains(event.id());
    return new EventView(
        event.id(),
        event.sequence(),
        event.kind().word(),
        event.step(),
        Instants.text(event.occurredAt()),
        event.screen(),
        stands,
        EventWords.of(state, event),
        Instants.textOrNull(stands ? undoUntil(event) : Optional.empty()));
  }

  private static Optional<Instant> undoUntil(RunEvent event) {
    boolean byScreen =
        !event.screen().equals(RunEvent.CONDUCTOR) || event.kind() == EventKind.FINISHED;
    return byScreen && event.kind() != EventKind.UNDONE
        ? Optional.of(event.occurredAt().plus(UndoRules.WITHIN))
        : Optional.empty();
  }
}
