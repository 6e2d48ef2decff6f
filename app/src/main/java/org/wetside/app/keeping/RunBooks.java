package org.wetside.app.keeping;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.plan.LoadState;
import org.wetside.core.run.RunState;
import org.wetside.store.Loads;
import org.wetside.store.RunRow;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/** Every run against its events: numbered without a gap, and stored as the fold over them says. */
final class RunBooks {
  private final Session session;
  private final List<Fault> faults;
  private final Set<Long> loads = new HashSet<>();
  private int runs;
  private long events;

  RunBooks(Session session, List<Fault> faults) {
    this.session = session;
    this.faults = faults;
  }

  int runs() {
    return runs;
  }

  long events() {
    return events;
  }

  void check() {
    Reading.of(
        "runs",
        faults,
        () -> {
          List<Long> ids = new Runs(session).all();
          for (int i = ids.size() - 1; i >= 0; i--) {
            long id = ids.get(i);
            Reading.of("run " + id, faults, () -> check(id));
          }
        });
  }

  private void check(long id) {
    RunRow row = new Runs(session).row(id).orElseThrow();
    runs++;
    events += row.events();
    if (row.events() != row.lastEvent()) {
      say(id, row.events() + " events are stored, but the last has number " + row.lastEvent());
      return;
    }
    if (row.steps() != row.lastStep() + 1) {
      say(id, row.steps() + " steps are stored, but the last is step " + (row.lastStep() + 1));
      return;
    }
    RunState folded = new Runs(session).state(id, List.of());
    compare(id, "phase", row.phase().word(), folded.phase().word());
    compare(id, "first pour", words(row.startedAt()), words(folded.startedAt()));
    compare(id, "end", words(row.endedAt()), words(folded.endedAt()));
    new Runs(session)
        .find(id)
        .orElseThrow()
        .load()
        .filter(loads::add)
        .ifPresent(load -> load(id, load, folded));
  }

  /** The newest run of a load says where the load is. */
  private void load(long id, long load, RunState folded) {
    Optional<LoadState> stored = new Loads(session).find(load).map(found -> found.state());
    LoadState expected = expected(folded);
    if (stored.isEmpty()) {
      say(id, "its load " + load + " is not there");
    } else if (stored.get() != expected) {
      say(
          id,
          "it is "
              + folded.phase().word()
              + ", so its load "
              + load
              + " must be "
              + expected.word()
              + ", but is "
              + stored.get().word());
    }
  }

  private static LoadState expected(RunState folded) {
    if (folded.startedAt().isEmpty()) {
      return LoadState.PLANNED;
    }
    return folded.phase().over() ? LoadState.DONE : LoadState.RUNNING;
  }

  private void compare(long id, String thing, String stored, String folded) {
    if (!stored.equals(folded)) {
      say(id, "its " + thing + " is stored as " + stored + ", its events make it " + folded);
    }
  }

  private static String words(Optional<Instant> moment) {
    return moment.map(Instant::toString).orElse("none");
  }

  private void say(long id, String what) {
    faults.add(new Fault("run " + id, what));
  }
}
