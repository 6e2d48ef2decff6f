package org.wetside.web.strip;

import org.wetside.app.curves.ReadCurve;
import org.wetside.app.density.Densitometry;
import org.wetside.core.strip.KeptStrip;
import org.wetside.web.curves.CurveView;

/**
 * A strip with what its curve shows.
 *
 * @param strip what was done and read
 * @param curve what follows
 * @param claim how much may be claimed of densities that a scanner or camera read; empty for others
 */
public record ReadStripView(StripView strip, CurveView curve, String claim) {
  /**
   * A strip of the file, read.
   *
   * @param densitometry tells what kind of instrument read it
   */
  public static ReadStripView of(KeptStrip kept, Densitometry densitometry) {
    ReadCurve.Answer answer = new ReadCurve().answer(kept.strip().curveReadings());
    return new ReadStripView(
        StripView.of(kept),
        CurveView.of(answer, kept.strip().light().givesSpeed()),
        MadeWithText.of(kept.strip().with(), densitometry).claim());
  }
}
