package org.wetside.core.learning;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/** How the shadows of a negative look, on a scale of four. */
public enum ShadowWord {
  /** Nothing is in them; clear film. */
  EMPTY("empty"),
  /** Something is in them, too little. */
  WEAK("weak"),
  /** As they should be. */
  GOOD("good"),
  /** More than they need. */
  HEAVY("heavy");

  private final String word;

  ShadowWord(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()}.
   *
   * @throws BadValueException for any other word, with the list
   */
  public static ShadowWord parse(String typed) {
    return Arrays.stream(values())
        .filter(one -> one.word.equalsIgnoreCase(typed.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "shadows",
                    typed.strip(),
                    "it is one of: "
                        + Arrays.stream(values())
                            .map(ShadowWord::word)
                            .collect(Collectors.joining(", "))));
  }
}
