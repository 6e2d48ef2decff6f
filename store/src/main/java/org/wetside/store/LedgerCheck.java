package org.wetside.store;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
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
    bottles().forEach(id -> complaints.addAll(complaints(id)));
    return complaints;
  }

  /** Identities of all bottles that were ever there. */
  public List<Long> bottles() {
    return session.list("SELECT id FROM bottle ORDER BY id", row -> row.whole("id"));
  }

  /** The same of one bottle. */
  public List<String> complaints(long id) {
    List<String> complaints = new ArrayList<>();
    new BottleRows(session).byId(id).ifPresent(kept -> look(kept, complaints));
    return complaints;
  }

  private void look(BottleRows.Kept kept, List<String> complaints) {
    Bottle bottle = kept.bottle();
    String name = "bottle " + bottle.label().letter() + " (" + kept.id() + ")";
    List<PostedLine> posted = new LedgerRows(session).all(kept.id());
    if (posted.isEmpty() || !(posted.get(0).line().what() instanceof BottleEvent.Filled)) {
      complaints.add(name + ": its ledger does not begin with a filling");
    }
    BottleState state = BottleState.NOTHING;
    for (PostedLine line : posted) {
      state = state.after(line.line(), bottle.label().bath());
      if (!state.left().equals(line.left())) {
        complaints.add(
            name + ": line " + line.id() + " says " + line.left() + ", the fold " + state.left());
      }
    }
    for (String difference : differences(bottle.state(), state)) {
      complaints.add(name + ": " + difference);
    }
    List<RollMark> folded =
        RollMarks.of(bottle.label().bath(), posted.stream().map(PostedLine::line).toList()).stream()
            .map(MarkedRoll::mark)
            .toList();
    if (!folded.equals(marks(kept.id()))) {
      complaints.add(name + ": the marks of its rolls are not what its ledger comes to");
    }
  }

  private static List<String> differences(BottleState kept, BottleState folded) {
    List<String> differences = new ArrayList<>();
    for (RecordComponent part : BottleState.class.getRecordComponents()) {
      Object one = value(part, kept);
      Object other = value(part, folded);
      if (!one.equals(other)) {
        differences.add(part.getName() + " is kept as " + one + ", its ledger makes it " + other);
      }
    }
    return differences;
  }

  private static Object value(RecordComponent part, BottleState of) {
    try {
      return part.getAccessor().invoke(of);
    } catch (IllegalAccessException | InvocationTargetException broken) {
      throw new IllegalStateException("cannot read " + part.getName(), broken);
    }
  }

  private List<RollMark> marks(long bottle) {
    return session.list(
        "SELECT mark FROM bottle_roll WHERE bottle_id = ? AND undoes = 0 ORDER BY id",
        row -> RollMark.fromWord(row.text("mark")),
        bottle);
  }
}
