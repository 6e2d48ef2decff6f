package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.thermal.Water;

/** The waters of the house, found by name in any case, in the order in which they were added. */
public final class Waters {
  private final Session session;

  /** Works in this reading or transaction. */
  public Waters(Session session) {
    this.session = session;
  }

  /** All of them, the one preferred for mixing first. */
  public List<Water> all() {
    return session.list("SELECT * FROM water ORDER BY id", Waters::read);
  }

  /** One water. */
  public Optional<Water> find(String name) {
    return session.first("SELECT * FROM water WHERE name = ?", Waters::read, name.strip());
  }

  /** Writes a water, new or in place of the one of that name. */
  public void put(Water water) {
    session.change(
        "INSERT INTO water (name, temperature_c, hardness) VALUES (?, ?, ?)"
            + " ON CONFLICT (name) DO UPDATE SET name = excluded.name,"
            + " temperature_c = excluded.temperature_c, hardness = excluded.hardness",
        water.name(),
        water.temperature(),
        water.hardness().word());
  }

  /** Takes a water away; false when there is none of that name. */
  public boolean remove(String name) {
    boolean known = find(name).isPresent();
    session.change("DELETE FROM water WHERE name = ?", name.strip());
    return known;
  }

  private static Water read(Row row) {
    return new Water(
        row.text("name"),
        row.temperature("temperature_c"),
        Water.Hardness.fromWord(row.text("hardness")));
  }
}
