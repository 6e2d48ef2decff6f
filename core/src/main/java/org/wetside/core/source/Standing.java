package org.wetside.core.source;

/**
 * How a value came to be known, in the order in which it is preferred. An answer has the standing
 * of its weakest step.
 */
public enum Standing {
  /** Measured by the user. */
  MEASURED("measured"),
  /** Read in the source, or in another person's transcription of it. */
  PUBLISHED("published"),
  /** Computed from published or measured values. */
  COMPUTED("computed"),
  /** What the trade does, without one source. */
  COMMON_PRACTICE("common practice"),
  /** Recalled, not read: usable, flagged wherever it is shown, never asserted. */
  FROM_MEMORY("from memory");

  private final String word;

  Standing(String word) {
    this.word = word;
  }

  /** The word shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static Standing fromWord(String word) {
    for (Standing standing : values()) {
      if (standing.word.equals(word)) {
        return standing;
      }
    }
    throw new IllegalArgumentException("no such standing: " + word);
  }

  /** The less trustworthy of the two. */
  public Standing weaker(Standing other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
