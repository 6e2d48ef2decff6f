package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.chemistry.FormulaLine;
import org.wetside.core.chemistry.OwnFormula;

/** Formulas of the user's own. */
public final class OwnFormulas {
  private final Session session;

  /** Works in this reading or transaction. */
  public OwnFormulas(Session session) {
    this.session = session;
  }

  /** Keeps one, in place of that of the same short name if there is one. */
  public void keep(OwnFormula formula, Instant at) {
    remove(formula.code());
    long id =
        session.insert(
            "INSERT INTO own_formula (code, name, kind, source, note, kept_at)"
                + " VALUES (?, ?, ?, ?, ?, ?)",
            formula.code(),
            formula.name(),
            formula.kind(),
            formula.source(),
            formula.note(),
            at);
    for (int i = 0; i < formula.lines().size(); i++) {
      FormulaLine line = formula.lines().get(i);
      session.change(
          "INSERT INTO own_formula_line (formula_id, position, ingredient, mass_g, volume_ml)"
              + " VALUES (?, ?, ?, ?, ?)",
          id,
          i + 1,
          line.ingredient(),
          line.mass(),
          line.volume());
    }
  }

  /** All of them, by short name. */
  public List<OwnFormula> all() {
    return session.list("SELECT * FROM own_formula ORDER BY code", this::read);
  }

  /** Removes one; says whether there was one. Batches keep their own copy of its steps. */
  public boolean remove(String code) {
    session.change(
        "DELETE FROM own_formula_line WHERE formula_id IN"
            + " (SELECT id FROM own_formula WHERE code = ?)",
        code);
    return session.change("DELETE FROM own_formula WHERE code = ?", code) > 0;
  }

  /** Whether there is one of that short name. */
  public Optional<OwnFormula> find(String code) {
    return session.first("SELECT * FROM own_formula WHERE code = ?", this::read, code);
  }

  private OwnFormula read(Row row) {
    return new OwnFormula(
        row.text("code"),
        row.text("name"),
        row.text("kind"),
        row.text("source"),
        row.text("note"),
        session.list(
            "SELECT * FROM own_formula_line WHERE formula_id = ? ORDER BY position",
            line ->
                new FormulaLine(
                    line.text("ingredient"),
                    line.maybeMass("mass_g"),
                    line.maybeVolume("volume_ml")),
            row.whole("id")));
  }
}
