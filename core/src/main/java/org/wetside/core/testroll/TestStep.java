package org.wetside.core.testroll;

import org.wetside.core.quantity.BadValueException;

/**
 * What is done for a test roll, in its order. Days may lie between any two: each is ticked by
 * itself, and what is not yet ticked is what comes next.
 */
public enum TestStep {
  /** Learn on a spoilt film how far frame 1 lies from the tip of the leader. */
  LEADER("leader", Part.PREPARE, 0),
  /** Set out the lengths to cut, to be felt in the dark. */
  GAUGE("gauge", Part.PREPARE, 0),
  /** Set up card, light and camera. */
  CARD("card", Part.EXPOSE, 0),
  /** Meter the card. */
  METER("meter", Part.EXPOSE, 0),
  /** Expose every frame. */
  EXPOSE("expose", Part.EXPOSE, 0),
  /** Rewind and mark the cassette. */
  REWIND("rewind", Part.EXPOSE, 0),
  /** Cut in the dark. */
  CUT("cut", Part.CUT, 0),
  /** Develop the first piece, for the shortest time. */
  DEVELOP_1("develop-1", Part.DEVELOP, 1),
  /** Develop the second piece, for the middle time. */
  DEVELOP_2("develop-2", Part.DEVELOP, 2),
  /** Develop the third piece, for the longest time. */
  DEVELOP_3("develop-3", Part.DEVELOP, 3),
  /** Read the densities of the first piece. */
  READ_1("read-1", Part.READ, 1),
  /** Read the densities of the second piece. */
  READ_2("read-2", Part.READ, 2),
  /** Read the densities of the third piece. */
  READ_3("read-3", Part.READ, 3),
  /** Turn the readings into curves and a time. */
  RESULT("result", Part.READ, 0);

  private final String word;
  private final Part part;
  private final int piece;

  TestStep(String word, Part part, int piece) {
    this.word = word;
    this.part = part;
    this.piece = piece;
  }

  /** Steps done in one go, in one place. */
  public enum Part {
    /** In daylight, before a good film is spent. */
    PREPARE,
    /** At the camera. */
    EXPOSE,
    /** In full dark. */
    CUT,
    /** At the sink, three times. */
    DEVELOP,
    /** On dry film. */
    READ
  }

  /** Stored and sent; never shown alone. */
  public String word() {
    return word;
  }

  /** Where it belongs. */
  public Part part() {
    return part;
  }

  /** The piece it is about, 1 to 3; 0 for a step of the whole roll. */
  public int piece() {
    return piece;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static TestStep fromWord(String word) {
    for (TestStep step : values()) {
      if (step.word.equals(word.strip())) {
        return step;
      }
    }
    throw new BadValueException(
        "step of a test roll", word, "one of its steps, for example " + EXPOSE.word);
  }
}
