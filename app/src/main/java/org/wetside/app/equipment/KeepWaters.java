package org.wetside.app.equipment;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.thermal.Water;
import org.wetside.store.Database;
import org.wetside.store.Waters;

/** The waters of the house: what each usually has, hard or soft. */
public final class KeepWaters {
  private static final int MOST = 12;

  private final Supplier<Database> database;

  /** In this home. */
  public KeepWaters(Supplier<Database> database) {
    this.database = database;
  }

  /** All of them, the one preferred for mixing first. */
  public List<Water> all() {
    return database.get().read(session -> new Waters(session).all());
  }

  /** One water, its name in any case. */
  public Optional<Water> find(String name) {
    return database.get().read(session -> new Waters(session).find(name));
  }

  /**
   * Writes a water in place of the one of that name, or anew.
   *
   * @throws BadValueException when there are twelve already
   */
  public void put(Water water) {
    database
        .get()
        .change(
            session -> {
              Waters waters = new Waters(session);
              if (waters.find(water.name()).isEmpty() && waters.all().size() >= MOST) {
                throw new BadValueException("waters", MOST + "", "at most " + MOST + " of them");
              }
              waters.put(water);
            });
  }

  /** Takes a water away; false when there is none of that name. */
  public boolean remove(String name) {
    return database.get().inTransaction(session -> new Waters(session).remove(name));
  }
}
