package org.wetside.core.process;

import org.wetside.core.quantity.BadValueException;

/** What light the film may see during a step. */
public enum Light {
  /** The lid stays on; only the cap comes off. */
  DARK("dark"),
  /** Light does no harm; the lid may come off. */
  ANY("any"),
  /** Light is the purpose. */
  REQUIRED("required");

  private final String word;

  Light(String word) {
    this.word = word;
  }

  /** The word shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Light fromWord(String word) {
    for (Light light : values()) {
      if (light.word.equals(word)) {
        return light;
      }
    }
    throw new BadValueException("light", word, "choose dark, any or required");
  }
}
