package org.wetside.core.process;

/** What a cue asks for, in the order in which they follow each other at one moment. */
public enum Act {
  GET_READY("get ready"),
  POUR("pour in"),
  LIGHT_ON("light on"),
  AGITATE("agitate"),
  TAP("tap"),
  REST("rest"),
  READ("take a reading"),
  DRAIN("drain"),
  RETURN("back to bottle"),
  NEXT_BATH("next bath"),
  CAP_ONLY("cap only"),
  LID_OFF("lid may come off"),
  HANG("hang");

  private final String word;

  Act(String word) {
    this.word = word;
  }

  /** The word shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }
}
