package org.wetside.core.shelf;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.bath.BathKind;

/**
 * Which rolls a bath's tests vouch for. A failed test recalls every roll since the last passed one,
 * and every later roll until a test is passed; a roll stays recalled until it was fixed again.
 */
public final class RollMarks {
  private final BathKind bath;
  private final List<MarkedRoll> rolls = new ArrayList<>();
  private final List<Integer> unproven = new ArrayList<>();
  private boolean failed;

  private RollMarks(BathKind bath) {
    this.bath = bath;
  }

  /** All rolls of a ledger in the order in which they went in, oldest line first. */
  public static List<MarkedRoll> of(BathKind bath, List<LedgerLine> ledger) {
    RollMarks marks = new RollMarks(bath);
    ledger.forEach(marks::take);
    return List.copyOf(marks.rolls);
  }

  /** The rolls of a ledger that are to be fixed again. */
  public static List<MarkedRoll> recalled(BathKind bath, List<LedgerLine> ledger) {
    return of(bath, ledger).stream().filter(roll -> roll.mark() == RollMark.RECALLED).toList();
  }

  /**
   * Whether a test decides over rolls: one of a fixer, made on a bath that fixes.
   *
   * @param test the line of the test
   */
  public static boolean decides(BathKind bath, BottleEvent.Tested test) {
    return test.test().ofFixer() && FilmUse.fixes(bath);
  }

  private void take(LedgerLine line) {
    BottleEvent what = line.what();
    if (what instanceof BottleEvent.Used used) {
      used.film().forEach(film -> add(line, film));
    } else if (what instanceof BottleEvent.UseUndone) {
      undo(line.run());
    } else if (what instanceof BottleEvent.Tested test && decides(bath, test)) {
      unproven.forEach(i -> mark(i, test.passed() ? RollMark.PROVEN : RollMark.RECALLED));
      unproven.clear();
      failed = !test.passed();
    } else if (what instanceof BottleEvent.Refixed refixed) {
      refixed.rolls().forEach(this::refix);
    }
  }

  private void add(LedgerLine line, FilmUse film) {
    if (!failed) {
      unproven.add(rolls.size());
    }
    RollMark mark = failed ? RollMark.RECALLED : RollMark.UNPROVEN;
    rolls.add(new MarkedRoll(film, line.run(), line.at(), mark));
  }

  private void undo(String run) {
    for (int i = rolls.size() - 1; i >= 0; i--) {
      if (rolls.get(i).run().equals(run)) {
        mark(i, RollMark.UNDONE);
      }
    }
    unproven.removeIf(i -> rolls.get(i).mark() == RollMark.UNDONE);
  }

  /** Of rolls without a number one at a time is fixed again: the one that has waited longest. */
  private void refix(String number) {
    for (int i = 0; i < rolls.size(); i++) {
      MarkedRoll roll = rolls.get(i);
      if (roll.mark() == RollMark.RECALLED && roll.film().roll().equals(number)) {
        mark(i, RollMark.REFIXED);
        if (number.isEmpty()) {
          return;
        }
      }
    }
  }

  private void mark(int index, RollMark mark) {
    rolls.set(index, rolls.get(index).marked(mark));
  }
}
