package org.wetside.web.curves;

import org.wetside.core.sensitometry.MovedStep;

/**
 * A step that was levelled out because densities fell.
 *
 * @param logH of the step
 * @param read density as read
 * @param taken density the curve takes
 */
public record MovedView(double logH, double read, double taken) {
  static MovedView of(MovedStep step) {
    return new MovedView(step.log10LuxSeconds(), step.read(), step.taken());
  }
}
