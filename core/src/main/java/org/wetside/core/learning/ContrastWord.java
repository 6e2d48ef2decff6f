package org.wetside.core.learning;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/** How contrasty a negative is for its paper or scanner, on a scale of five. */
public enum ContrastWord {
  /** Far too flat. */
  FLAT("flat"),
  /** Somewhat too flat. */
  RATHER_FLAT("a little flat"),
  /** As wanted. */
  RIGHT("right"),
  /** Somewhat too contrasty. */
  RATHER_HARD("a little hard"),
  /** Far too contrasty. */
  HARD("hard");

  private final String word;

  ContrastWord(String word) {
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
  public static ContrastWord parse(String typed) {
    return Arrays.stream(values())
        .filter(one -> one.word.equalsIgnoreCase(typed.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "contrast",
                    typed.strip(),
                    "it is one of: "
                        + Arrays.stream(values())
                            .map(ContrastWord::word)
                            .collect(Collectors.joining(", "))));
  }
}
