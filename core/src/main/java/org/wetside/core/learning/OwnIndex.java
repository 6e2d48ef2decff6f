package org.wetside.core.learning;

import org.wetside.core.quantity.ExposureIndex;

/**
 * The index at which a film in a developer gets its shadows in this user's hands.
 *
 * @param exposed the index its rolls were exposed at, the first of them
 * @param belief stops from there; negative: it needs more light
 */
public record OwnIndex(ExposureIndex exposed, Belief belief) {
  /** The middle of the belief. */
  public ExposureIndex middle() {
    return shifted(belief.mean());
  }

  /** The low end of nine in ten. */
  public ExposureIndex low() {
    return shifted(belief.mean() - belief.halfBand());
  }

  /** The high end of nine in ten. */
  public ExposureIndex high() {
    return shifted(belief.mean() + belief.halfBand());
  }

  private ExposureIndex shifted(double stops) {
    return ExposureIndex.of(exposed.isoArithmetic() * Math.pow(2, stops));
  }
}
