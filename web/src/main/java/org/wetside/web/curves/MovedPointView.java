package org.wetside.web.curves;

import org.wetside.core.sensitometry.ContrastPoint;

/**
 * A point that was levelled out because contrast fell, as it was read.
 *
 * @param minutes of the point
 * @param contrast as read
 */
public record MovedPointView(double minutes, double contrast) {
  static MovedPointView of(ContrastPoint point) {
    return new MovedPointView(point.seconds() / 60, point.contrast());
  }
}
