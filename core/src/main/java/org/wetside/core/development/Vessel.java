package org.wetside.core.development;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/** What the film is developed in, as far as a time depends on it. */
public enum Vessel {
  /** A daylight tank for a few reels, turned over by hand. */
  SMALL_TANK("small", "small tank"),
  /** A deep tank with racks or baskets, lifted or stirred by gas. */
  LARGE_TANK("large", "large tank"),
  /** A tube or drum that turns all the time. */
  ROTARY("rotary", "rotary tube"),
  /** An open tray, sheets shuffled. */
  TRAY("tray", "tray"),
  /** A roller-transport machine: evidence only, never asked for. */
  MACHINE("machine", "machine"),
  /** The source does not say. */
  NOT_STATED("", "tank not stated");

  private final String word;
  private final String label;

  Vessel(String word, String label) {
    this.word = word;
    this.label = label;
  }

  /** The word that {@link #parse} reads, empty when not stated. */
  public String word() {
    return word;
  }

  /** As said to people, for example {@code small tank}. */
  public String label() {
    return label;
  }

  /**
   * Reads {@code small}, {@code large}, {@code rotary} or {@code tray}, also followed by {@code
   * tank} or {@code tube}; empty means not stated.
   *
   * @throws BadValueException for anything else
   */
  public static Vessel parse(String text) {
    String bare = text.strip().toLowerCase(Locale.ROOT).replaceFirst("[ -](tank|tube|drum)$", "");
    for (Vessel vessel : values()) {
      if (vessel != MACHINE && vessel.word.equals(bare)) {
        return vessel;
      }
    }
    throw new BadValueException("vessel", text.strip(), "write small, large, rotary or tray");
  }
}
