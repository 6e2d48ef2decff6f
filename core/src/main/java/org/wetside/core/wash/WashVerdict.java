package org.wetside.core.wash;

/** What a lower bound of the residue can say about the limit. */
public enum WashVerdict {
  /** Too much is left by every half-time: the wash is too short. */
  ABOVE("above the limit"),
  /** Too much by one half-time on file and not by another: wash longer. */
  HALF_TIMES_DISAGREE("above the limit by one half-time, below it by the other"),
  /** Nothing speaks against it, and only the test of the film proves it. */
  BELOW("below the limit, as a lower bound");

  private final String word;

  WashVerdict(String word) {
    this.word = word;
  }

  /** As shown to people and written to JSON. */
  public String word() {
    return word;
  }
}
