package org.wetside.core.shelf;

/** What is known of the fixing of a roll. */
public enum RollMark {
  /** Fixed since the last test of the bath; the next test decides. */
  UNPROVEN("not yet vouched for"),
  /** A test after it was passed. */
  PROVEN("vouched for"),
  /** A test after it failed, or the bath was known to be spent: to be fixed again. */
  RECALLED("to be fixed again"),
  /** It was recalled, and has been fixed again. */
  REFIXED("fixed again"),
  /** The end of its run was taken back. */
  UNDONE("taken back");

  private final String word;

  RollMark(String word) {
    this.word = word;
  }

  /** The words shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other words
   */
  public static RollMark fromWord(String word) {
    for (RollMark mark : values()) {
      if (mark.word.equals(word)) {
        return mark;
      }
    }
    throw new IllegalArgumentException("no such mark of a roll: " + word);
  }
}
