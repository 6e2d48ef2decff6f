package org.wetside.core.plan;

import java.util.Arrays;

/** Where a load is on its way. */
public enum LoadState {
  /** Made, nothing poured. */
  PLANNED("planned"),
  /** On the Bench. */
  RUNNING("running"),
  /** Its rolls hang. */
  DONE("done"),
  /** Taken apart before it was run; its rolls wait again. */
  DISSOLVED("dissolved");

  private final String word;

  LoadState(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static LoadState fromWord(String word) {
    return Arrays.stream(values())
        .filter(state -> state.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such state of a load: " + word));
  }
}
