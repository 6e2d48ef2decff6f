package org.wetside.app.checks;

import java.util.Arrays;

/** What belongs together before the first pour, in the order in which it is gone through. */
public enum CheckGroup {
  /** The tank as it is closed: only hands and eyes can answer. */
  CLOSING("closing"),
  /** What is handled: its cautions, and baths that should not follow one another. */
  HANDLING("handling"),
  /** The baths against their bands and against each other. */
  TEMPERATURES("temperatures"),
  /** Each bottle that is poured from. */
  BOTTLES("bottles"),
  /** Enough developer for so much film. */
  STOCK("stock"),
  /** Tests of the baths that a precious roll goes into. */
  PRECIOUS("precious");

  private final String word;

  CheckGroup(String word) {
    this.word = word;
  }

  /** The word shown and sent. */
  public String word() {
    return word;
  }

  /** The group of a check by its id: all but those of the closed tank begin with their group. */
  static CheckGroup ofId(String id) {
    return Arrays.stream(values())
        .filter(group -> id.startsWith(group.word + "-"))
        .findFirst()
        .orElse(CLOSING);
  }
}
