package org.wetside.core.testroll;

/**
 * What was typed for one frame, also where it is no number yet: a page half filled in is kept.
 *
 * @param frame number on the roll, from 1
 * @param first the first time; may be empty
 * @param second the second time; may be empty
 */
public record TypedReading(int frame, String first, String second) {
  /** Strips what was typed. */
  public TypedReading {
    first = first.strip();
    second = second.strip();
  }

  /** Whether nothing was typed. */
  public boolean isEmpty() {
    return first.isEmpty() && second.isEmpty();
  }
}
