package org.wetside.core.run;

/** Who set a moment. */
public enum Origin {
  /** The conductor wrote it because the plan said so; nobody confirmed it. */
  PLANNED("planned"),
  /** A person pressed a key. */
  PRESSED("pressed");

  private final String word;

  Origin(String word) {
    this.word = word;
  }

  /** The word shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }

  /** Reads {@link #word()} back; anything else is a press. */
  public static Origin fromWord(String word) {
    return word.equals(PLANNED.word) ? PLANNED : PRESSED;
  }
}
