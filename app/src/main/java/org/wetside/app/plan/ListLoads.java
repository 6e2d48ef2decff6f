package org.wetside.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Runs;

/** The loads there are. */
public final class ListLoads {
  private final Supplier<Database> database;

  /** In this home. */
  public ListLoads(Supplier<Database> database) {
    this.database = database;
  }

  /** Planned and running ones, those at the Bench first. */
  public List<Load> open() {
    return database
        .get()
        .read(
            session -> {
              List<Load> loads = new ArrayList<>(new Loads(session).in(LoadState.RUNNING));
              loads.addAll(new Loads(session).in(LoadState.PLANNED));
              return loads;
            });
  }

  /** All in one state. */
  public List<Load> in(LoadState state) {
    return database.get().read(session -> new Loads(session).in(state));
  }

  /** One load. */
  public Optional<Load> find(long id) {
    return database.get().read(session -> new Loads(session).find(id));
  }

  /** The run of a load, when it was brought to the Bench. */
  public Optional<Long> runOf(long load) {
    return database.get().read(session -> new Runs(session).ofLoad(load));
  }
}
