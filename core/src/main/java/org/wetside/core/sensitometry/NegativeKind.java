package org.wetside.core.sensitometry;

import org.wetside.core.quantity.BadValueException;

/** What a negative is made of: a scanner reads only silver as a densitometer would. */
public enum NegativeKind {
  /** Silver, unstained. */
  SILVER("silver"),
  /** Silver and stain, from a staining developer. */
  STAINED("stained"),
  /** Dyes. */
  COLOUR("colour");

  private final String word;

  NegativeKind(String word) {
    this.word = word;
  }

  /** The word shown. */
  public String word() {
    return word;
  }

  void requireSilver() {
    if (this != SILVER) {
      throw new BadValueException(
          "negative",
          word,
          "its colour weighs differently in every instrument; only unstained silver is read");
    }
  }
}
