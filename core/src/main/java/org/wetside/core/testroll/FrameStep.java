package org.wetside.core.testroll;

import org.wetside.core.quantity.Stops;

/**
 * One exposure of the series.
 *
 * @param stops from what the meter said, positive for more light
 * @param exposure what is set on the camera
 */
public record FrameStep(Stops stops, CameraExposure exposure) {
  /** log10 of this exposure over the metered one [-]. */
  public double relativeLogH() {
    return stops.count() * Math.log10(2);
  }
}
