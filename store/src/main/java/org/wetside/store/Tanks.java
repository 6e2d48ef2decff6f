package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Tank;

/** The tanks, found by name in any case. */
public final class Tanks {
  private final Session session;

  /** Works in this reading or transaction. */
  public Tanks(Session session) {
    this.session = session;
  }

  /** All tanks, the largest last. */
  public List<Tank> all() {
    return session.list("SELECT * FROM tank ORDER BY holds_volume_ml, name", this::read);
  }

  /** One tank. */
  public Optional<Tank> find(String name) {
    return session.first("SELECT * FROM tank WHERE name = ?", this::read, name.strip());
  }

  /** Writes a tank, new or in place of the one of that name. */
  public void put(Tank tank) {
    session.change(
        "INSERT INTO tank (name, vessel, holds_volume_ml) VALUES (?, ?, ?)"
            + " ON CONFLICT (name) DO UPDATE SET name = excluded.name, vessel = excluded.vessel,"
            + " holds_volume_ml = excluded.holds_volume_ml",
        tank.name(),
        tank.vessel().word(),
        tank.holds());
    long id = id(tank.name()).orElseThrow();
    session.change("DELETE FROM tank_room WHERE tank_id = ?", id);
    for (Tank.Room room : tank.rooms()) {
      session.change(
          "INSERT INTO tank_room (tank_id, format, most, each_volume_ml) VALUES (?, ?, ?, ?)",
          id,
          room.format().word(),
          room.most(),
          room.each());
    }
  }

  /** What is looked at when a tank is closed, if the user wrote a list; else empty. */
  public List<ClosingItem> checks(String tank) {
    return session.list(
        "SELECT check_id, text, always FROM tank_check JOIN tank ON tank.id = tank_id"
            + " WHERE name = ? ORDER BY position",
        row -> new ClosingItem(row.text("check_id"), row.text("text"), row.yes("always")),
        tank.strip());
  }

  /** Keeps the list of a tank that is there; an empty one stands for the usual list. */
  public void putChecks(String tank, List<ClosingItem> items) {
    long id = id(tank).orElseThrow();
    session.change("DELETE FROM tank_check WHERE tank_id = ?", id);
    for (int i = 0; i < items.size(); i++) {
      session.change(
          "INSERT INTO tank_check VALUES (?, ?, ?, ?, ?)",
          id,
          i,
          items.get(i).id(),
          items.get(i).text(),
          items.get(i).always());
    }
  }

  /** Takes a tank away; loads that name it keep its name. False when there is none. */
  public boolean remove(String name) {
    Optional<Long> id = id(name);
    id.ifPresent(
        known -> {
          session.change("DELETE FROM tank_room WHERE tank_id = ?", known);
          session.change("DELETE FROM tank_check WHERE tank_id = ?", known);
          session.change("DELETE FROM tank WHERE id = ?", known);
        });
    return id.isPresent();
  }

  private Optional<Long> id(String name) {
    return session.first(
        "SELECT id FROM tank WHERE name = ?", row -> row.whole("id"), name.strip());
  }

  private Tank read(Row row) {
    List<Tank.Room> rooms =
        session.list(
            "SELECT * FROM tank_room WHERE tank_id = ? ORDER BY format",
            room ->
                new Tank.Room(
                    FilmFormat.parse(room.text("format")),
                    (int) room.whole("most"),
                    room.volume("each_volume_ml")),
            row.whole("id"));
    return new Tank(
        row.text("name"), Vessel.parse(row.text("vessel")), rooms, row.volume("holds_volume_ml"));
  }
}
