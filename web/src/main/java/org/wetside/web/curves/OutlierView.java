package org.wetside.web.curves;

import org.wetside.core.sensitometry.Outlier;

/**
 * A step that lies off the smooth curve: to be read again.
 *
 * @param logH of the step
 * @param read density as read
 * @param expected density of the smooth curve there
 */
public record OutlierView(double logH, double read, double expected) {
  static OutlierView of(Outlier step) {
    return new OutlierView(step.log10LuxSeconds(), step.read(), step.expected());
  }
}
