package org.wetside.core.instrument;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/** How an instrument sees a negative. */
public enum InstrumentKind {
  /** Reads density itself; its calibration shows how far off it is, and corrects nothing. */
  DENSITOMETER("densitometer"),
  /** Gives pixels of a linear 16-bit picture. */
  SCANNER("scanner"),
  /** The same, over a light table. */
  CAMERA("camera");

  private final String word;

  InstrumentKind(String word) {
    this.word = word;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /** Whether pixels have to be turned into densities. */
  public boolean seesPixels() {
    return this != DENSITOMETER;
  }

  /**
   * The kind of that word.
   *
   * @throws BadValueException naming the words there are
   */
  public static InstrumentKind fromWord(String word) {
    return Arrays.stream(values())
        .filter(kind -> kind.word.equalsIgnoreCase(word.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "kind of instrument",
                    word,
                    "one of "
                        + Arrays.stream(values())
                            .map(InstrumentKind::word)
                            .collect(Collectors.joining(", "))));
  }
}
