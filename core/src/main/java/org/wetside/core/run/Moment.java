package org.wetside.core.run;

import org.wetside.core.quantity.BadValueException;

/** Which moment of a step's beginning an event marks. */
public enum Moment {
  /** The pour begins (and with it the bath before ends). */
  POUR("pour"),
  /** The tank is full: the step's own clock starts. */
  FULL("full");

  private final String word;

  Moment(String word) {
    this.word = word;
  }

  /** The word written to JSON and the database. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Moment fromWord(String word) {
    for (Moment moment : values()) {
      if (moment.word.equals(word)) {
        return moment;
      }
    }
    throw new BadValueException("moment of a step", word, "pour or full");
  }
}
