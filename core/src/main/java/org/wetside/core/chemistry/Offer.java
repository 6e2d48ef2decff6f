package org.wetside.core.chemistry;

/** What may be done with a formula. */
public enum Offer {
  /** It can be mixed. */
  MIX("mix"),
  /** Drops for a test: shown, made up by its own instructions. */
  TEST_KIT("test kit"),
  /** Shown with the reason why nobody should mix it now. */
  HISTORY("history");

  private final String word;

  Offer(String word) {
    this.word = word;
  }

  /** As it is shown and written in files. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static Offer fromWord(String word) {
    for (Offer one : values()) {
      if (one.word.equals(word)) {
        return one;
      }
    }
    throw new IllegalArgumentException("no such offer: " + word);
  }
}
