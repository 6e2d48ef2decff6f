package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.quantity.Mass;
import org.wetside.core.source.Standing;

/** The balance, and the syringes and graduates, found by name in any case. */
public final class OwnMeasures {
  private final Session session;

  /** Works in this reading or transaction. */
  public OwnMeasures(Session session) {
    this.session = session;
  }

  /** The balance; empty until somebody has said what it shows. */
  public Optional<Balance> balance() {
    return session.first(
        "SELECT step_g FROM balance", row -> new Balance(Mass.ofGrams(row.number("step_g"))));
  }

  /** Writes the balance down in place of the one before. */
  public void put(Balance balance) {
    session.change(
        "INSERT INTO balance (id, step_g) VALUES (1, ?)"
            + " ON CONFLICT (id) DO UPDATE SET step_g = excluded.step_g",
        balance.step());
  }

  /** Forgets the balance; false when none was written down. */
  public boolean removeBalance() {
    return session.change("DELETE FROM balance") > 0;
  }

  /** All syringes and graduates, the smallest first. */
  public List<Measure> all() {
    return session.list(
        "SELECT * FROM measure ORDER BY capacity_volume_ml, name", OwnMeasures::read);
  }

  /** Writes a measure, new or in place of the one of that name. */
  public void put(Measure measure) {
    session.change(
        "INSERT INTO measure (name, capacity_volume_ml, division_volume_ml) VALUES (?, ?, ?)"
            + " ON CONFLICT (name) DO UPDATE SET name = excluded.name,"
            + " capacity_volume_ml = excluded.capacity_volume_ml,"
            + " division_volume_ml = excluded.division_volume_ml",
        measure.name(),
        measure.capacity(),
        measure.division());
  }

  /** Takes a measure away; false when there is none of that name. */
  public boolean remove(String name) {
    return session.change("DELETE FROM measure WHERE name = ?", name.strip()) > 0;
  }

  private static Measure read(Row row) {
    return new Measure(
        row.text("name"),
        row.volume("capacity_volume_ml"),
        row.volume("division_volume_ml"),
        Standing.MEASURED);
  }
}
