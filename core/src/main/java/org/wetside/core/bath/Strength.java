package org.wetside.core.bath;

import org.wetside.core.quantity.BadValueException;

/** How strong the liquid in a bottle is. */
public enum Strength {
  /** As the maker sells it, to be diluted. */
  CONCENTRATE("concentrate"),
  /** Made up once, then used so or diluted. */
  STOCK("stock"),
  /** Ready to pour into the tank. */
  WORKING("working");

  private final String word;

  Strength(String word) {
    this.word = word;
  }

  /** The trade's word, shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Strength fromWord(String word) {
    for (Strength strength : values()) {
      if (strength.word.equalsIgnoreCase(word.strip())) {
        return strength;
      }
    }
    throw new BadValueException("strength", word, "it must be concentrate, stock or working");
  }
}
