package org.wetside.core.shelf;

/** What a mishap writes on a bottle until it is answered. */
public enum BottleMark {
  /** Try it out first; a passed test answers it, or a decision. */
  TEST_FIRST("test first"),
  /** Nobody knows what is in it now; only a decision answers it. */
  DO_NOT_USE("do not use");

  private final String word;

  BottleMark(String word) {
    this.word = word;
  }

  /** The words shown, and stored as the kind of the line. */
  public String word() {
    return word;
  }

  /** What the line that answers it is called. */
  public String liftedWord() {
    return word + " lifted";
  }
}
