package org.wetside.store;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.MarkedRoll;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.RollMark;
import org.wetside.core.shelf.RollMarks;

/** Compares every ledger with what is kept beside it. */
public final class LedgerCheck {
  private final Session session;

  /** Works in this reading. */
  public LedgerCheck(Session session) {
    this.session = session;
  }

  /** What does not agree, in a sentence each; empty when every ledger balances. */
  public List<String> complaints() {
    List<String> complaints = new ArrayList<>();
    for (Bottles.Kept kept : new Bottles(session).everyOne()) {
      look(kept, complaints);
    }
    return complaints;
  }

  private void look(Bottles.Kept kept, List<String> complaints) {
    Bottle bottle = kept.bottle();
    String name = "bottle " + bottle.label().letter() + " (" + kept.id() + ")";
    List<PostedLine> posted = new LedgerRows(session).all(kept.id());
    BottleState state = BottleState.NOTHING;
    for (PostedLine line : posted) {
      state = state.after(line.line(), bottle.label().bath());
      if (!state.left().equals(line.left())) {
        complaints.add(
            name + ": line " + line.id() + " says " + line.left() + ", the fold " + state.left());
      }
    }
    if (!state.equals(bottle.state())) {
      complaints.add(name + ": kept is " + bottle.state() + ", its ledger comes to " + state);
    }
    List<RollMark> folded =
        RollMarks.of(bottle.label().bath(), posted.stream().map(PostedLine::line).toList()).stream()
            .map(MarkedRoll::mark)
            .toList();
    if (!folded.equals(marks(kept.id()))) {
      complaints.add(name + ": the marks of its rolls are not what its ledger comes to");
    }
  }

  private List<RollMark> marks(long bottle) {
    return session.list(
        "SELECT mark FROM bottle_roll WHERE bottle_id = ? AND undoes = 0 ORDER BY id",
        row -> RollMark.fromWord(row.text("mark")),
        bottle);
  }
}
