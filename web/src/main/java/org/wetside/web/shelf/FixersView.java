package org.wetside.web.shelf;

import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.shelf.FixerPair;
import org.wetside.core.shelf.Verdict;

/**
 * Fixers that are used two after each other.
 *
 * @param pairs those in use
 */
public record FixersView(List<PairView> pairs) {
  /**
   * One pair.
   *
   * @param first letter of the bottle that is used first
   * @param second letter of the one used second
   * @param rotations how often the second has become the first
   * @param next what to do when the first is spent
   * @param verdict on the first, with its reasons
   * @param spent whether the first is known to be spent
   */
  public record PairView(
      String first, String second, int rotations, String next, VerdictView verdict, boolean spent) {
    static PairView of(FixerPair pair, Verdict verdict) {
      return new PairView(
          pair.first(),
          pair.second(),
          pair.rotations(),
          words(pair.next()),
          VerdictView.of(verdict),
          verdict.kind() == Verdict.Kind.DISCARD);
    }
  }

  /** The view of the pairs in use. */
  public static FixersView of(Wetside wetside) {
    return new FixersView(
        wetside.turnFixers().all().stream().map(pair -> view(wetside, pair)).toList());
  }

  private static PairView view(Wetside wetside, FixerPair pair) {
    return PairView.of(pair, wetside.judgeBottles().find(pair.first()).orElseThrow().verdict());
  }

  /** What a turn is, in a sentence. */
  static String words(FixerPair.Turn turn) {
    if (turn instanceof FixerPair.MoveDown down) {
      return "Discard "
          + down.discard()
          + ", use "
          + down.movesDown()
          + " first from now on, and a fresh fixer second (turn "
          + down.number()
          + " of "
          + FixerPair.MOST_ROTATIONS
          + "; CH-S01).";
    }
    FixerPair.DiscardBoth both = (FixerPair.DiscardBoth) turn;
    return "Discard "
        + both.first()
        + " and "
        + both.second()
        + ", and begin with two fresh ones"
        + " (CH-S14, p.107, said of paper).";
  }
}
