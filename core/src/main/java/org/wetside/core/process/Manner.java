package org.wetside.core.process;

import org.wetside.core.quantity.BadValueException;

/** How the liquid is kept moving over the film. */
public enum Manner {
  /** The closed tank is turned over and back. */
  INVERSION("inversion"),
  /** Sheets are lifted, drained at a corner and put back. */
  FILM_LIFT("film lift"),
  /** All the time, by hand. */
  CONTINUOUS("continuous"),
  /** All the time, on rollers or a motor. */
  ROTARY("rotary"),
  /** Only at the beginning. */
  STAND("stand"),
  /** At the beginning and once half way. */
  SEMI_STAND("semi-stand"),
  /** Not at all. */
  NONE("none");

  private final String word;

  Manner(String word) {
    this.word = word;
  }

  /** The word of the trade, shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }

  /** Whether the tank moves for the whole step. */
  public boolean withoutRest() {
    return this == CONTINUOUS || this == ROTARY;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Manner fromWord(String word) {
    for (Manner manner : values()) {
      if (manner.word.equalsIgnoreCase(word.strip())) {
        return manner;
      }
    }
    throw new BadValueException(
        "agitation",
        word,
        "choose inversion, film lift, continuous, rotary, stand, semi-stand or none");
  }
}
