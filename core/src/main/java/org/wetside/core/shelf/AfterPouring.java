package org.wetside.core.shelf;

import org.wetside.core.quantity.BadValueException;

/** What becomes of liquid that was on film. */
public enum AfterPouring {
  /** Thrown away after one use. */
  ONE_SHOT("one-shot"),
  /** Poured back and used again. */
  REUSED("reused"),
  /** Poured back, and freshened with replenisher by the film that went through. */
  REPLENISHED("replenished");

  private final String word;

  AfterPouring(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static AfterPouring fromWord(String word) {
    for (AfterPouring use : values()) {
      if (use.word.equalsIgnoreCase(word.strip())) {
        return use;
      }
    }
    throw new BadValueException("use of the bottle", word, "one-shot, reused or replenished");
  }
}
