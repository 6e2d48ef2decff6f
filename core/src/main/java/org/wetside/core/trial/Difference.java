package org.wetside.core.trial;

/** Why two clearing times must not be compared. */
public enum Difference {
  /** There is none to compare with. */
  NO_BASELINE("no baseline"),
  /** The clips were of different films. */
  FILM("another film"),
  /** The fixer was made differently. */
  DILUTION("another dilution"),
  /** The temperatures were too far apart. */
  TEMPERATURE("another temperature");

  private final String word;

  Difference(String word) {
    this.word = word;
  }

  /** In words, shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static Difference fromWord(String word) {
    for (Difference difference : values()) {
      if (difference.word.equals(word)) {
        return difference;
      }
    }
    throw new IllegalArgumentException("no such difference: " + word);
  }
}
