package org.wetside.core.run;

import org.wetside.core.quantity.BadValueException;

/** The kinds of event a run is made of. */
public enum EventKind {
  STARTED("started"),
  STEP_BEGUN("step begun"),
  STEP_DRAINED("step drained"),
  LENGTHENED("lengthened"),
  CUT_SHORT("cut short"),
  WAITING_BEGUN("waiting begun"),
  WAIT_ASKED("wait asked"),
  WAIT_WITHDRAWN("wait withdrawn"),
  READING_TAKEN("reading taken"),
  CUE_MISSED("cue missed"),
  MISHAP("mishap"),
  NOTE("note"),
  GAP("gap"),
  UNDONE("undone"),
  FINISHED("finished"),
  ABANDONED("abandoned");

  private final String word;

  EventKind(String word) {
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
  public static EventKind fromWord(String word) {
    for (EventKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new BadValueException("kind of event", word, "it is not one of the events of a run");
  }
}
