package org.wetside.web.strip;

import org.wetside.app.density.Densitometry;
import org.wetside.core.strip.MadeWith;
import org.wetside.web.density.Claim;

/**
 * With what a strip was exposed and read, in words.
 *
 * @param tablet its name; empty when nobody said
 * @param instrument its name and the day of its calibration; empty when nobody said
 * @param claim how much may be claimed of what it read; empty for a densitometer, and when nobody
 *     said
 */
public record MadeWithText(String tablet, String instrument, String claim) {
  static MadeWithText of(MadeWith with, Densitometry densitometry) {
    if (with.instrument().isEmpty()) {
      return new MadeWithText(with.tablet(), "", "");
    }
    boolean shows =
        densitometry
            .keepInstruments()
            .find(with.instrument())
            .map(known -> !known.instrument().kind().seesPixels())
            .orElse(with.calibratedOn().isEmpty());
    return new MadeWithText(
        with.tablet(),
        with.instrument()
            + with.calibratedOn()
                .map(day -> (shows ? ", checked " : ", calibrated ") + day)
                .orElse(""),
        shows ? "" : Claim.TEXT + " " + Claim.OF_SPEED);
  }
}
