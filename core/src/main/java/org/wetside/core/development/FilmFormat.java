package org.wetside.core.development;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/** The form a film is sold in, as far as a printed time depends on it. */
public enum FilmFormat {
  /** Perforated 35 mm film in a cassette. */
  SMALL("135"),
  /** 120 film, and 220. */
  MEDIUM("120"),
  /** Printed for rolls without saying which: 135 and 120. */
  ROLL("roll"),
  /** Cut sheets. */
  SHEET("sheet"),
  /** Not stated. */
  ANY("any");

  private final String word;

  FilmFormat(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /** Whether a time printed for this format holds for the other one. */
  public boolean covers(FilmFormat asked) {
    if (this == asked || this == ANY || asked == ANY) {
      return true;
    }
    return (this == ROLL && asked != SHEET) || (asked == ROLL && this != SHEET);
  }

  /**
   * Reads {@link #word()} and the trade's variants: {@code 35mm}, {@code 220}, {@code 4x5}.
   *
   * @throws BadValueException for anything else
   */
  public static FilmFormat parse(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT).replace(" ", "")) {
      case "135", "35mm", "35" -> SMALL;
      case "120", "220", "120/220roll" -> MEDIUM;
      case "roll" -> ROLL;
      case "sheet", "sheets", "4x5", "5x7", "8x10" -> SHEET;
      case "any", "" -> ANY;
      default ->
          throw new BadValueException("format", text.strip(), "write 135, 120, roll or sheet");
    };
  }
}
