package org.wetside.core.plan;

import java.util.Arrays;

/** Where a roll is on its way. */
public enum RollState {
  /** Exposed, in the drawer. */
  WAITING("waiting"),
  /** In a load that is planned or running. */
  LOADED("loaded"),
  /** Developed and hung. */
  PROCESSED("processed"),
  /** In its sleeve, under its number. */
  FILED("filed"),
  /** Taken out of the drawer by the user; its record stays. */
  WITHDRAWN("withdrawn");

  private final String word;

  RollState(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /** Whether there are negatives of it. */
  public boolean isDeveloped() {
    return this == PROCESSED || this == FILED;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static RollState fromWord(String word) {
    return Arrays.stream(values())
        .filter(state -> state.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such state of a roll: " + word));
  }
}
