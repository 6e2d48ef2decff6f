package org.wetside.app.equipment;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Session;
import org.wetside.store.Tanks;

/** What is looked at when a tank is closed: the usual list of its kind, or the user's own. */
public final class KeepTankChecks {
  private final Supplier<Database> database;

  /** In this home. */
  public KeepTankChecks(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * The list of a tank.
   *
   * @throws BadValueException when there is no such tank
   */
  public List<ClosingItem> of(String tank) {
    return database
        .get()
        .read(
            session -> {
              Tank known = known(session, tank);
              List<ClosingItem> own = new Tanks(session).checks(tank);
              return own.isEmpty() ? ClosingItem.usual(known.vessel()) : own;
            });
  }

  /**
   * Keeps a list; an empty one, or one that is the usual one, gives the tank back the usual list.
   *
   * @throws BadValueException when there is no such tank
   */
  public void put(String tank, List<ClosingItem> items) {
    database
        .get()
        .change(
            session -> {
              Tank known = known(session, tank);
              boolean usual = items.equals(ClosingItem.usual(known.vessel()));
              new Tanks(session).putChecks(known.name(), usual ? List.of() : items);
            });
  }

  private static Tank known(Session session, String tank) {
    return new Tanks(session)
        .find(tank)
        .orElseThrow(
            () -> new BadValueException("tank", tank, "there is no such tank under Equipment"));
  }
}
