package org.wetside.store;

import java.util.List;
import java.util.Optional;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.instrument.TabletStep;
import org.wetside.core.quantity.OpticalDensity;

/** The step tablets, found by name in any case. */
public final class StepTablets {
  private final Session session;

  /** Works in this reading or transaction. */
  public StepTablets(Session session) {
    this.session = session;
  }

  /** All of them by name. */
  public List<StepTablet> all() {
    return session.list("SELECT * FROM step_tablet ORDER BY name", this::read);
  }

  /** One of them. */
  public Optional<StepTablet> find(String name) {
    return session.first("SELECT * FROM step_tablet WHERE name = ?", this::read, name.strip());
  }

  /** Keeps one, in the place of one of the same name. */
  public void put(StepTablet tablet) {
    remove(tablet.name());
    long id =
        session.insert(
            "INSERT INTO step_tablet (name, origin) VALUES (?, ?)", tablet.name(), tablet.origin());
    int position = 0;
    for (TabletStep step : tablet.steps()) {
      session.change(
          "INSERT INTO tablet_step VALUES (?, ?, ?, ?)",
          id,
          position++,
          step.label(),
          step.density().value());
    }
  }

  /** Takes one away; false when there is none. Calibrations made with it keep their densities. */
  public boolean remove(String name) {
    Optional<Long> id =
        session.first(
            "SELECT id FROM step_tablet WHERE name = ?", row -> row.whole("id"), name.strip());
    id.ifPresent(
        known -> {
          session.change("DELETE FROM tablet_step WHERE tablet_id = ?", known);
          session.change("DELETE FROM step_tablet WHERE id = ?", known);
        });
    return id.isPresent();
  }

  private StepTablet read(Row row) {
    return new StepTablet(
        row.text("name"),
        row.text("origin"),
        session.list(
            "SELECT * FROM tablet_step WHERE tablet_id = ? ORDER BY position",
            step -> new TabletStep(step.text("label"), OpticalDensity.of(step.number("density"))),
            row.whole("id")));
  }
}
