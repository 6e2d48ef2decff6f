package org.wetside.store;

import java.util.List;
import org.wetside.core.shelf.RecalledRoll;
import org.wetside.core.shelf.RollMark;

/** The rolls that are to be fixed again, over all bottles that were ever there. */
public final class Recalls {
  /** Written out, so that the index of exactly these is used. */
  private static final String RECALLED = "u.mark = '" + RollMark.RECALLED.word() + "'";

  private static final String WHICH =
      "SELECT u.bottle_id, u.roll, u.film, b.letter, b.contents, l.run, l.happened_at, r.sleeve, r.owner, r.title"
          + " FROM bottle_roll u JOIN bottle b ON b.id = u.bottle_id"
          + " JOIN bottle_line l ON l.id = u.line_id LEFT JOIN roll r ON r.number = u.roll"
          + " WHERE u.undoes = 0 AND "
          + RECALLED;

  private final Session session;

  /** Works in this reading or transaction. */
  public Recalls(Session session) {
    this.session = session;
  }

  /** All of them, the first fixed first. */
  public List<RecalledRoll> all() {
    return session.list(WHICH + " ORDER BY u.id", Recalls::read);
  }

  /** How many there are. */
  public int count() {
    String counted = "SELECT count(*) AS n FROM bottle_roll u WHERE u.undoes = 0 AND " + RECALLED;
    return Math.toIntExact(session.first(counted, row -> row.whole("n")).orElse(0L));
  }

  /** Where a roll is to be fixed again; several when it was in several spent baths. */
  public List<RecalledRoll> of(String roll) {
    return session.list(
        WHICH + " AND u.roll = ? COLLATE NOCASE ORDER BY u.id", Recalls::read, roll.strip());
  }

  private static RecalledRoll read(Row row) {
    return new RecalledRoll(
        row.whole("bottle_id"),
        row.text("roll"),
        row.text("film"),
        row.text("letter"),
        row.text("contents"),
        row.text("run"),
        row.moment("happened_at"),
        row.maybeText("sleeve").orElse(""),
        row.maybeText("owner").orElse(""),
        row.maybeText("title").orElse(""));
  }
}
