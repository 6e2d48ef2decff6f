package org.wetside.core.strip;

import java.time.LocalDate;
import java.util.Optional;

/**
 * With what a strip was exposed and read, by the names of that day.
 *
 * @param tablet name of the step tablet; empty when nobody said
 * @param instrument name of what read the densities; empty when nobody said
 * @param calibratedOn day of the calibration it read by; empty without an instrument, and for a
 *     densitometer that was never checked
 */
public record MadeWith(String tablet, String instrument, Optional<LocalDate> calibratedOn) {
  /** Nobody said. */
  public static final MadeWith NOT_SAID = new MadeWith("", "", Optional.empty());

  /** Takes blanks around the names away. */
  public MadeWith {
    tablet = tablet.strip();
    instrument = instrument.strip();
  }
}
