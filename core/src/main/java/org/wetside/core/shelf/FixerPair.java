package org.wetside.core.shelf;

/**
 * Two fixers used one after the other: film clears in the first and stays as long again in the
 * second (CH-S01).
 *
 * @param first letter of the bottle that is used first
 * @param second letter of the bottle that is used second
 * @param rotations how often the second has become the first
 */
public record FixerPair(String first, String second, int rotations) {
  /** After so many both are discarded together (CH-S14 p.107, said of paper). */
  public static final int MOST_ROTATIONS = 3;

  /** What to do when the first is spent. */
  public sealed interface Turn {}

  /**
   * Discard the first, move the second down, put a fresh one behind it.
   *
   * @param discard letter of the spent first
   * @param movesDown letter of the second, the first from now on
   * @param number which rotation this is, 1 to {@link #MOST_ROTATIONS}
   */
  public record MoveDown(String discard, String movesDown, int number) implements Turn {}

  /**
   * Discard both and begin anew.
   *
   * @param first letter of the first
   * @param second letter of the second
   */
  public record DiscardBoth(String first, String second) implements Turn {}

  /** What to do when the first is spent. */
  public Turn next() {
    return rotations >= MOST_ROTATIONS
        ? new DiscardBoth(first, second)
        : new MoveDown(first, second, rotations + 1);
  }

  /** The pair after moving down. */
  public FixerPair movedDown(String fresh) {
    return new FixerPair(second, fresh, rotations + 1);
  }
}
