package org.wetside.app.density;

import org.wetside.core.instrument.Means;
import org.wetside.core.instrument.PatchMeasure;

/**
 * What is known of a patch when its density is asked for.
 *
 * @param label what it is called
 * @param means of its channels
 * @param clippedShare part of its pixels that say nothing of the light, 0 to 1
 */
public record MeasuredPatch(String label, Means means, double clippedShare) {
  /** Of a rectangle of a picture. */
  public static MeasuredPatch of(PatchMeasure measure) {
    return new MeasuredPatch(
        measure.patch().label(),
        measure.means(),
        (double) measure.measured().clipped() / measure.pixels());
  }
}
