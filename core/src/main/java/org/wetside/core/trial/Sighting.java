package org.wetside.core.trial;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/** What was seen at the end of a test. */
public enum Sighting {
  /** What a good bath shows: it is clear, it is black, nothing stays, no stain. */
  GOOD("good"),
  /** What a spent bath or an unfinished wash shows. */
  BAD("bad"),
  /** Neither can be said; there is a reason. */
  UNSURE("unsure");

  private final String word;

  Sighting(String word) {
    this.word = word;
  }

  /** The word typed and sent. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static Sighting parse(String text) {
    String said = text.strip().toLowerCase(Locale.ROOT);
    for (Sighting sighting : values()) {
      if (sighting.word.equals(said)) {
        return sighting;
      }
    }
    throw new BadValueException("what was seen", text, "it is good, bad or unsure");
  }
}
