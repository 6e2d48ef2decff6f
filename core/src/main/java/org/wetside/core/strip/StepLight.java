package org.wetside.core.strip;

import org.wetside.core.quantity.BadValueException;

/** What is known of the light that made the steps. */
public enum StepLight {
  /** Lux seconds of a light that was calibrated: the only one whose speed may be called ISO. */
  CALIBRATED("calibrated", "lux seconds of a calibrated light"),
  /** Lux seconds that were reckoned, not calibrated. */
  ESTIMATED("estimated", "lux seconds, not calibrated"),
  /** Only differences of log exposure mean something: no speed can be read. */
  RELATIVE("relative", "relative: only differences are known"),
  /** A card metered and exposed in a camera: meter, lens and shutter are in it. */
  CAMERA("camera", "camera exposures of a metered card");

  private final String word;
  private final String meaning;

  StepLight(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** Shown, stored and typed. */
  public String word() {
    return word;
  }

  /** The same in a few words more. */
  public String meaning() {
    return meaning;
  }

  /** Whether a speed can be read at all: the exposures are lux seconds, well or badly known. */
  public boolean givesSpeed() {
    return this != RELATIVE;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static StepLight fromWord(String word) {
    for (StepLight light : values()) {
      if (light.word.equals(word.strip())) {
        return light;
      }
    }
    throw new BadValueException("light", word, "calibrated, estimated, relative or camera");
  }
}
