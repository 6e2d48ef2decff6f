package org.wetside.app.density;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.instrument.StepTablet;
import org.wetside.store.Database;
import org.wetside.store.StepTablets;

/** The step tablets with densities of their own. */
public final class KeepTablets {
  private final Supplier<Database> database;

  KeepTablets(Supplier<Database> database) {
    this.database = database;
  }

  /** All of them by name. */
  public List<StepTablet> all() {
    return database.get().read(session -> new StepTablets(session).all());
  }

  /** One of them, its name in any case. */
  public Optional<StepTablet> find(String name) {
    return database.get().read(session -> new StepTablets(session).find(name));
  }

  /** Keeps one, in the place of one of the same name; calibrations made before stay as they are. */
  public void put(StepTablet tablet) {
    database.get().change(session -> new StepTablets(session).put(tablet));
  }

  /** Takes one away; false when there is none of that name. */
  public boolean remove(String name) {
    return database.get().inTransaction(session -> new StepTablets(session).remove(name));
  }
}
