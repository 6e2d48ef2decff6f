package org.wetside.store;

import java.util.List;
import org.wetside.core.bath.BathKind;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.MarkedRoll;
import org.wetside.core.shelf.RollMark;
import org.wetside.core.shelf.RollMarks;

/** The rolls of a ledger with their marks, carried along as {@link RollMarks} would fold them. */
final class RollMarkRows {
  private static final String ALL_OF_A_NUMBER =
      "UPDATE bottle_roll SET mark = ? WHERE bottle_id = ? AND mark = ? AND roll = ?";

  /** The one that has waited longest: each of them is fixed by itself. */
  private static final String ONE_UNNUMBERED =
      "UPDATE bottle_roll SET mark = ? WHERE id = (SELECT min(id) FROM bottle_roll"
          + " WHERE bottle_id = ? AND undoes = 0 AND mark = ? AND roll = ?)";

  private final Session session;

  RollMarkRows(Session session) {
    this.session = session;
  }

  /** After a line, with the bottle as it was before. */
  void after(long bottle, Bottle before, long line, LedgerLine entered) {
    BottleEvent what = entered.what();
    BathKind bath = before.label().bath();
    if (what instanceof BottleEvent.Used used) {
      boolean spent = FilmUse.fixes(bath) && before.state().fixFailed();
      add(bottle, line, used.film(), false, spent ? RollMark.RECALLED : RollMark.UNPROVEN);
    } else if (what instanceof BottleEvent.UseUndone undone) {
      session.change(
          "UPDATE bottle_roll SET mark = ? WHERE bottle_id = ? AND undoes = 0 AND line_id IN"
              + " (SELECT id FROM bottle_line WHERE run = ?)",
          RollMark.UNDONE.word(),
          bottle,
          entered.run());
      add(bottle, line, undone.film(), true, RollMark.UNDONE);
    } else if (what instanceof BottleEvent.Tested test && RollMarks.decides(bath, test)) {
      session.change(
          "UPDATE bottle_roll SET mark = ? WHERE bottle_id = ? AND mark = ?",
          (test.passed() ? RollMark.PROVEN : RollMark.RECALLED).word(),
          bottle,
          RollMark.UNPROVEN.word());
    } else if (what instanceof BottleEvent.Refixed refixed) {
      for (String roll : refixed.rolls()) {
        session.change(
            roll.isEmpty() ? ONE_UNNUMBERED : ALL_OF_A_NUMBER,
            RollMark.REFIXED.word(),
            bottle,
            RollMark.RECALLED.word(),
            roll);
      }
    }
  }

  /** Writes the marks anew from the whole ledger. */
  void rewrite(long bottle, BathKind bath, List<LedgerLine> ledger) {
    List<Long> ids =
        session.list(
            "SELECT id FROM bottle_roll WHERE bottle_id = ? AND undoes = 0 ORDER BY id",
            row -> row.whole("id"),
            bottle);
    List<MarkedRoll> folded = RollMarks.of(bath, ledger);
    for (int i = 0; i < ids.size(); i++) {
      session.change(
          "UPDATE bottle_roll SET mark = ? WHERE id = ?", folded.get(i).mark().word(), ids.get(i));
    }
  }

  private void add(long bottle, long line, List<FilmUse> film, boolean undoes, RollMark mark) {
    for (FilmUse use : film) {
      session.change(
          "INSERT INTO bottle_roll (bottle_id, line_id, undoes, roll, film, film_rolls, tabular,"
              + " mark) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
          bottle,
          line,
          undoes,
          use.roll(),
          use.film(),
          use.amount().rolls(),
          use.tabular(),
          mark.word());
    }
  }
}
