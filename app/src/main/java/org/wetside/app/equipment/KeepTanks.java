package org.wetside.app.equipment;

import java.util.List;
import java.util.Optional;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Tanks;

/** The tanks of the user. */
public final class KeepTanks {
  private final Database database;

  /** Over one home's database. */
  public KeepTanks(Database database) {
    this.database = database;
  }

  /** All tanks, the largest last. */
  public List<Tank> all() {
    return database.read(session -> new Tanks(session).all());
  }

  /** One tank, its name in any case. */
  public Optional<Tank> find(String name) {
    return database.read(session -> new Tanks(session).find(name));
  }

  /**
   * Adds a tank.
   *
   * @throws BadValueException when there is one of that name
   */
  public void add(Tank tank) {
    database.change(
        session -> {
          Tanks tanks = new Tanks(session);
          if (tanks.find(tank.name()).isPresent()) {
            throw new BadValueException(
                "name of the tank", tank.name(), "there is one of that name; choose another");
          }
          tanks.put(tank);
        });
  }

  /** Writes a tank in place of the one of that name, or anew. */
  public void put(Tank tank) {
    database.change(session -> new Tanks(session).put(tank));
  }

  /** Takes a tank away; false when there is none of that name. */
  public boolean remove(String name) {
    return database.inTransaction(session -> new Tanks(session).remove(name));
  }
}
