package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
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

  /** Takes a tank away; loads that name it keep its name. False when there is none. */
  public boolean remove(String name) {
    Optional<Long> id = id(name);
    id.ifPresent(
        known -> {
          session.change("DELETE FROM tank_room WHERE tank_id = ?", known);
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
