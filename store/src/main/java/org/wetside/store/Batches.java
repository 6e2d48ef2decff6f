package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/** What was mixed from formulas, each with its own copy of the steps. */
public final class Batches {
  private static final String ALL =
      "SELECT batch.*, bottle.letter AS bottle_letter FROM batch"
          + " LEFT JOIN bottle ON bottle.id = batch.bottle_id ";

  private final Session session;

  /** Works in this reading or transaction. */
  public Batches(Session session) {
    this.session = session;
  }

  /** Begins one; the number it gets. */
  public long add(Batch batch) {
    long id =
        session.insert(
            "INSERT INTO batch (formula, name, kind, total_volume_ml, balance_step_g, standing,"
                + " begun_at) VALUES (?, ?, ?, ?, ?, ?, ?)",
            batch.formula(),
            batch.name(),
            batch.kind(),
            batch.total(),
            batch.balance().step(),
            batch.standing().word(),
            batch.begunAt());
    for (Batch.Step step : batch.steps()) {
      session.change(
          "INSERT INTO batch_step (batch_id, position, ingredient, planned_mass_g,"
              + " planned_volume_ml, how) VALUES (?, ?, ?, ?, ?, ?)",
          id,
          step.position(),
          step.ingredient(),
          step.mass(),
          step.volume(),
          step.how());
    }
    return id;
  }

  /** The newest first, at most that many. */
  public List<Batch> newest(int most) {
    return session.list(ALL + "ORDER BY batch.id DESC LIMIT ?", this::read, most);
  }

  /** The one of that number. */
  public Optional<Batch> find(long id) {
    return session.first(ALL + "WHERE batch.id = ?", this::read, id);
  }

  /** The one in the bottle of that letter on the shelf, the newest if several went into it. */
  public Optional<Batch> inBottle(String letter) {
    return session.first(
        ALL + "WHERE bottle.letter = ? AND bottle.discarded = 0 ORDER BY batch.id DESC",
        this::read,
        letter.strip().toUpperCase(Locale.ROOT));
  }

  /** A step is done with what really went in, or, with nothing, not done after all. */
  public void mark(
      long id,
      int position,
      Optional<Mass> weighed,
      Optional<Volume> measured,
      Optional<Instant> doneAt) {
    session.change(
        "UPDATE batch_step SET weighed_mass_g = ?, weighed_volume_ml = ?, done_at = ?"
            + " WHERE batch_id = ? AND position = ?",
        weighed,
        measured,
        doneAt,
        id,
        position);
  }

  /** It went into the bottle of that letter on the shelf; says whether there is one. */
  public boolean fill(long id, String letter) {
    Optional<Long> bottle =
        session.first(
            "SELECT id FROM bottle WHERE discarded = 0 AND letter = ?",
            row -> row.whole("id"),
            letter.strip().toUpperCase(Locale.ROOT));
    return bottle
        .map(one -> session.change("UPDATE batch SET bottle_id = ? WHERE id = ?", one, id) > 0)
        .orElse(false);
  }

  private Batch read(Row row) {
    long id = row.whole("id");
    return new Batch(
        id,
        row.text("formula"),
        row.text("name"),
        row.text("kind"),
        row.volume("total_volume_ml"),
        new Balance(Mass.ofGrams(row.number("balance_step_g"))),
        Standing.fromWord(row.text("standing")),
        row.moment("begun_at"),
        row.maybeText("bottle_letter"),
        session.list(
            "SELECT * FROM batch_step WHERE batch_id = ? ORDER BY position",
            step ->
                new Batch.Step(
                    (int) step.whole("position"),
                    step.text("ingredient"),
                    step.maybeMass("planned_mass_g"),
                    step.maybeVolume("planned_volume_ml"),
                    step.text("how"),
                    step.maybeMass("weighed_mass_g"),
                    step.maybeVolume("weighed_volume_ml"),
                    step.maybeMoment("done_at")),
            id));
  }
}
