package org.wetside.core.shelf;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/** How a bath is tried out before film is trusted to it (common practice). */
public enum BathTest {
  /** A piece of exposed leader in the developer, in room light: it has to turn black. */
  LEADER("leader test", false),
  /** A clip of film in the fixer, in room light: it has to clear in time. */
  CLIP("clip test", true),
  /** A few drops of iodide in a sample of the fixer: it has to stay clear. */
  IODIDE("iodide test", true);

  private final String word;
  private final boolean ofFixer;

  BathTest(String word, boolean ofFixer) {
    this.word = word;
    this.ofFixer = ofFixer;
  }

  /** The trade's word. */
  public String word() {
    return word;
  }

  /** Whether it says that a fixer fixes, so that rolls fixed before it are vouched for. */
  public boolean ofFixer() {
    return ofFixer;
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
    throw new BadValueException(
        "test of a bath", text, "it is a leader test, a clip test or an iodide test");
  }
}
