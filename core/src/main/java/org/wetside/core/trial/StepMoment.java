package org.wetside.core.trial;

/** When a step of a test is done. */
public enum StepMoment {
  /** Before the clock runs. */
  BEFORE("before"),
  /** With the key that starts the clock. */
  START("start"),
  /** While the clock runs. */
  WAIT("wait"),
  /** How it is judged. */
  JUDGE("judge"),
  /** Afterwards. */
  AFTER("after");

  private final String word;

  StepMoment(String word) {
    this.word = word;
  }

  /** The word in the file. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static StepMoment fromWord(String word) {
    for (StepMoment moment : values()) {
      if (moment.word.equals(word)) {
        return moment;
      }
    }
    throw new IllegalArgumentException("no such moment of a test: " + word);
  }
}
