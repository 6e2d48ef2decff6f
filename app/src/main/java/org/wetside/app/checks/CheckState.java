package org.wetside.app.checks;

/** How a check stands. */
public enum CheckState {
  /** Not answered: by a person, or for want of data. */
  OPEN("open"),
  /** Answered by what is known. */
  DONE("done by data"),
  /** What is known speaks against it. */
  WARNING("warning");

  private final String word;

  CheckState(String word) {
    this.word = word;
  }

  /** The word shown and sent. */
  public String word() {
    return word;
  }

  /** The graver of two. */
  CheckState or(CheckState other) {
    if (this == WARNING || other == WARNING) {
      return WARNING;
    }
    return this == OPEN || other == OPEN ? OPEN : DONE;
  }
}
