package org.wetside.core.shelf;

import org.wetside.core.quantity.BadValueException;

/** What a bottle is for. */
public enum BottleRole {
  /** As the maker sells it, to be diluted. */
  CONCENTRATE("concentrate"),
  /** Made up once, then used so or diluted. */
  STOCK("stock"),
  /** Ready to pour into the tank. */
  WORKING("working"),
  /** Added to a bath in small parts so that it stays what it is. */
  REPLENISHER("replenisher"),
  /** Used up, kept until it is handed in; never poured onto film. */
  WASTE("waste");

  private final String word;

  BottleRole(String word) {
    this.word = word;
  }

  /** The trade's word, shown and stored. */
  public String word() {
    return word;
  }

  /** Whether liquid from it may touch film. */
  public boolean touchesFilm() {
    return this != WASTE;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static BottleRole fromWord(String word) {
    for (BottleRole role : values()) {
      if (role.word.equalsIgnoreCase(word.strip())) {
        return role;
      }
    }
    throw new BadValueException(
        "role of the bottle", word, "it is concentrate, stock, working, replenisher or waste");
  }
}
