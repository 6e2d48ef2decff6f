package org.wetside.core.bath;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/** How a bath is tried out before film is trusted to it (common practice). */
public enum BathTest {
  /** A piece of exposed leader in the developer, in room light: it has to turn black. */
  LEADER("leader test"),
  /** A clip of film in the fixer, in room light: it has to clear in time. */
  CLIP("clip test");

  private final String word;

  BathTest(String word) {
    this.word = word;
  }

  /** The trade's word. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back, with or without "test".
   *
   * @throws BadValueException for any other word
   */
  public static BathTest parse(String text) {
    String said = text.strip().toLowerCase(Locale.ROOT);
    for (BathTest test : values()) {
      if (test.word.equals(said) || test.word.equals(said + " test")) {
        return test;
      }
    }
    throw new BadValueException("test of a bath", text, "it is a leader test or a clip test");
  }
}
