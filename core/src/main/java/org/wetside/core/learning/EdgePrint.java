package org.wetside.core.learning;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/**
 * The maker's exposed letters on the edge of the film: they depend on development alone, not on the
 * camera, and are looked at first.
 */
public enum EdgePrint {
  /** Grey: development was short. */
  THIN("thinner than usual"),
  /** Development came out. */
  USUAL("as usual"),
  /** Development went far. */
  HEAVY("heavier than usual"),
  /** There is none, or nobody looked. */
  NONE("not to be seen");

  private final String word;

  EdgePrint(String word) {
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
  public static EdgePrint parse(String typed) {
    return Arrays.stream(values())
        .filter(one -> one.word.equalsIgnoreCase(typed.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "edge print",
                    typed.strip(),
                    "it is one of: "
                        + Arrays.stream(values())
                            .map(EdgePrint::word)
                            .collect(Collectors.joining(", "))));
  }
}
