package org.wetside.core.run;

/** Where a run stands. <em>Interrupted</em> is a mark on running or waiting, not a phase. */
public enum Phase {
  READY("ready"),
  RUNNING("running"),
  /** Between steps, in a bath where waiting is harmless. */
  WAITING("waiting"),
  FINISHED("finished"),
  ABANDONED("abandoned");

  private final String word;

  Phase(String word) {
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
  public static Phase fromWord(String word) {
    for (Phase phase : values()) {
      if (phase.word.equals(word)) {
        return phase;
      }
    }
    throw new IllegalArgumentException("no such phase of a run: " + word);
  }

  /** Whether nothing more is to come. */
  public boolean over() {
    return this == FINISHED || this == ABANDONED;
  }
}
