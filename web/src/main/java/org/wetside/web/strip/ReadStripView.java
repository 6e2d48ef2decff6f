package org.wetside.web.strip;

import org.wetside.app.curves.ReadCurve;
import org.wetside.core.strip.KeptStrip;
import org.wetside.web.curves.CurveView;

/**
 * A strip with what its curve shows.
 *
 * @param strip what was done and read
 * @param curve what follows
 */
public record ReadStripView(StripView strip, CurveView curve) {
  /** A strip of the file, read. */
  public static ReadStripView of(KeptStrip kept) {
    ReadCurve.Answer answer = new ReadCurve().answer(kept.strip().curveReadings());
    return new ReadStripView(
        StripView.of(kept), CurveView.of(answer, kept.strip().light().givesSpeed()));
  }
}
