package org.wetside.web.shelf;

import java.util.List;
import org.wetside.core.shelf.FixerPair;

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
   */
  public record PairView(String first, String second, int rotations, String next) {
    static PairView of(FixerPair pair) {
      return new PairView(pair.first(), pair.second(), pair.rotations(), words(pair.next()));
    }
  }

  /** The view of pairs. */
  public static FixersView of(List<FixerPair> pairs) {
    return new FixersView(pairs.stream().map(PairView::of).toList());
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
