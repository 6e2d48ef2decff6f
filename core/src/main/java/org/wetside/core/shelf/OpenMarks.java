package org.wetside.core.shelf;

import java.util.ArrayList;
import java.util.List;

/** The marks of mishaps that are still to be answered: a fold over the lines of a ledger. */
public final class OpenMarks {
  private OpenMarks() {}

  /**
   * The marks after one more line. A person's decision answers every mark of its kind; a run that
   * takes its mishap back answers its own. A passed test answers "test first" and nothing else.
   */
  public static List<MarkSeen> after(List<MarkSeen> before, LedgerLine line) {
    BottleEvent what = line.what();
    List<MarkSeen> marks = new ArrayList<>(before);
    if (what instanceof BottleEvent.Marked marked) {
      marks.add(new MarkSeen(line.at(), line.run(), line.note(), marked.mark()));
    } else if (what instanceof BottleEvent.MarkLifted lifted) {
      boolean byHand = line.run().isEmpty();
      marks.removeIf(
          seen -> seen.mark() == lifted.mark() && (byHand || seen.run().equals(line.run())));
    } else if (what instanceof BottleEvent.Tested test && test.passed()) {
      marks.removeIf(seen -> seen.mark() == BottleMark.TEST_FIRST);
    }
    return List.copyOf(marks);
  }
}
