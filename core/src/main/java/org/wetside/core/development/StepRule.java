package org.wetside.core.development;

import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One rule of the way from a printed time to the asked one.
 *
 * @param name which rule
 * @param value its factor, slope or limit; the rule says in what
 * @param lnSd standard deviation it adds, in ln(time) [-]
 * @param lnSdPer what it adds for each kelvin or stop, in ln(time) [-]
 * @param standing how it is known
 * @param citation where it is from
 */
public record StepRule(
    Name name, double value, double lnSd, double lnSdPer, Standing standing, Citation citation) {
  /** The rules; what each says stands in the reference file of steps. */
  public enum Name {
    ENTRY,
    ENTRY_MEASURED,
    TEMPERATURE_INSIDE,
    TEMPERATURE_OUTSIDE,
    TEMPERATURE_OTHER_FILMS,
    TEMPERATURE_UNKNOWN,
    INDEX_NORMAL,
    INDEX_CONTRAST,
    INDEX_PAIR,
    INDEX_FILM,
    INDEX_PUSH,
    INDEX_PULL,
    VESSEL_PAIR,
    VESSEL_LARGE,
    VESSEL_ROTARY,
    VESSEL_ROTARY_PRACTICE_LOW,
    VESSEL_ROTARY_PRACTICE_HIGH,
    VESSEL_NOT_STATED,
    DILUTION,
    BENCH_PERSON,
    BENCH_FILM,
    LIMIT_TOTAL,
    LIMIT_GUESS,
    LIMIT_COLD,
    LIMIT_WARM,
    HAND_TANK_SHORTEST;

    /** From the id of the reference file, for example {@code index-pair}. */
    public static Name fromId(String id) {
      return valueOf(id.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
    }
  }

  /** What it adds over so many kelvins or stops. */
  double lnSdOver(double count) {
    return lnSd + lnSdPer * Math.abs(count);
  }
}
