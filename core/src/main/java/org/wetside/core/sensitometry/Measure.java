package org.wetside.core.sensitometry;

/** What is read off a characteristic curve (model, section 3). */
public enum Measure {
  /** log10 of the exposure Hm, lux seconds, that gives 0.10 above base plus fog (ISO 6, SE-S01). */
  LOG_HM(0, "log exposure of the speed point"),
  /** Density between the speed point and 1.30 further in log exposure (ISO 6, SE-S01). */
  DELTA_D(1, "density over 1.30 of log exposure"),
  /** 0.83 − 0.86 ΔD + 0.24 ΔD²: from the speed point back to the fractional gradient (SE-S04). */
  DELTA_X(2, "ΔX"),
  /** 0.80/Hm, fixed density 0.10; not called ISO. */
  EXPOSURE_INDEX(3, "exposure index, fixed density 0.10"),
  /** (0.80/Hm)·10^(ΔX − 0.2956): the speed by the fractional gradient. */
  SPEED_DELTA_X(4, "speed by ΔX"),
  /** Chord from the speed point over 1.50 of log exposure (SE-S52). */
  AVERAGE_GRADIENT(5, "average gradient"),
  /** Slope of the ray met by the curve at distances 0.2 and 2.2 (SE-S07, S51, S52). */
  CONTRAST_INDEX(6, "contrast index"),
  /** Slope of the longest straight part (SE-S07). */
  GAMMA(7, "gamma");

  private final int place;
  private final String words;

  Measure(int place, String words) {
    this.place = place;
    this.words = words;
  }

  /** Where it stands in a list of all, from 0. */
  int place() {
    return place;
  }

  /** Its name for people. */
  public String words() {
    return words;
  }
}
