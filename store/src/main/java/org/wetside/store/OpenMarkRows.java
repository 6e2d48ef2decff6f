package org.wetside.store;

import java.util.List;
import java.util.Map;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.MarkSeen;
import org.wetside.core.shelf.OpenMarks;

/**
 * The marks of a bottle that nobody has answered yet, carried along as {@link OpenMarks} folds
 * them: the lines that made them, so that no other line of the ledger need be read.
 */
final class OpenMarkRows {
  private static final String OPEN =
      "SELECT l.* FROM bottle_mark m JOIN bottle_line l ON l.id = m.line_id WHERE m.bottle_id = ?"
          + " ORDER BY m.line_id";

  private final Session session;

  OpenMarkRows(Session session) {
    this.session = session;
  }

  /** Those of a bottle, the oldest first. */
  List<MarkSeen> of(long bottle) {
    return session.list(OPEN, OpenMarkRows::seen, bottle);
  }

  /** After a line of that id has moved the state on. */
  void after(long bottle, BottleState before, BottleState after, long id, LedgerLine line) {
    if (before.marks().equals(after.marks())) {
      return;
    }
    List<Map.Entry<Long, MarkSeen>> open =
        session.list(OPEN, row -> Map.entry(row.whole("id"), seen(row)), bottle);
    for (Map.Entry<Long, MarkSeen> one : open) {
      if (!after.marks().contains(one.getValue())) {
        session.change("DELETE FROM bottle_mark WHERE line_id = ?", one.getKey());
      }
    }
    if (line.what() instanceof BottleEvent.Marked) {
      session.change("INSERT INTO bottle_mark (line_id, bottle_id) VALUES (?, ?)", id, bottle);
    }
  }

  /** Forgets those of a bottle, before its ledger is folded anew. */
  void clear(long bottle) {
    session.change("DELETE FROM bottle_mark WHERE bottle_id = ?", bottle);
  }

  private static MarkSeen seen(Row row) {
    return OpenMarks.after(List.of(), LedgerRows.line(row, List.of()).line()).get(0);
  }
}
