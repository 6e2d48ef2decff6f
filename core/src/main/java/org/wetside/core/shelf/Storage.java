package org.wetside.core.shelf;

import org.wetside.core.quantity.BadValueException;

/** How a solution is kept, in the words of the tables of keeping times (CH-S90, CH-S91). */
public enum Storage {
  /** A full bottle with its stopper in. */
  FULL("full, stoppered"),
  /** A bottle with much air above the liquid. */
  HALF_FULL("half full"),
  /** A tank with a lid that swims on the liquid. */
  FLOATING_LID("tank with floating lid"),
  /** A tray without a lid. */
  OPEN_TRAY("open tray");

  /**
   * Below this share a stoppered bottle keeps like a half full one (common practice; the tables
   * know only full and half full).
   */
  public static final double COUNTS_AS_FULL = 0.75;

  private final String word;

  Storage(String word) {
    this.word = word;
  }

  /** The words shown and stored. */
  public String word() {
    return word;
  }

  /** How it really keeps when it is that full, 0 to 1. */
  public Storage at(double fullness) {
    return this == FULL && fullness < COUNTS_AS_FULL ? HALF_FULL : this;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Storage fromWord(String word) {
    for (Storage storage : values()) {
      if (storage.word.equalsIgnoreCase(word.strip())) {
        return storage;
      }
    }
    throw new BadValueException(
        "storage", word, "it is full, stoppered; half full; tank with floating lid; or open tray");
  }
}
