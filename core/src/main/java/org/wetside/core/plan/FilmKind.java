package org.wetside.core.plan;

import java.util.Arrays;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;

/** The kind of chemistry a film is made for; two kinds never share a tank. */
public enum FilmKind {
  /** Black-and-white negative. */
  BLACK_AND_WHITE("b/w"),
  /** Colour negative. */
  COLOUR_NEGATIVE("C-41"),
  /** Colour slide. */
  SLIDE("E-6");

  private final String word;

  FilmKind(String word) {
    this.word = word;
  }

  /** The word shown, stored and read by {@link #find}. */
  public String word() {
    return word;
  }

  /** Reads {@link #word()}; empty for anything else. */
  public static Optional<FilmKind> find(String text) {
    return Arrays.stream(values())
        .filter(kind -> kind.word.equalsIgnoreCase(text.strip()))
        .findFirst();
  }

  /**
   * Reads {@link #word()}.
   *
   * @throws BadValueException for anything else
   */
  public static FilmKind parse(String text) {
    return find(text)
        .orElseThrow(() -> new BadValueException("kind of film", text, "write b/w, C-41 or E-6"));
  }
}
