package org.wetside.core.instrument;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Whether a patch is as free of colour as the tablet was. Silver is; stain and dyes weigh more in
 * blue. A grey picture cannot tell.
 */
final class Neutrality {
  /** How far a ratio may leave that of the tablet, log10: a judgement, not read anywhere. */
  static final double TOLERANCE_LOG10 = 0.05;

  private final List<Means> tablet;

  private Neutrality(List<Means> tablet) {
    this.tablet = List.copyOf(tablet);
  }

  static Neutrality of(List<Means> tablet) {
    return new Neutrality(tablet);
  }

  boolean isColoured(Means patch) {
    return isOutside(patch, Means::redOverGreen) || isOutside(patch, Means::blueOverGreen);
  }

  private boolean isOutside(Means patch, ToDoubleFunction<Means> ratio) {
    double at = ratio.applyAsDouble(patch);
    double[] known =
        tablet.stream().mapToDouble(ratio).filter(one -> !Double.isNaN(one)).sorted().toArray();
    return known.length > 0
        && (at < known[0] - TOLERANCE_LOG10 || at > known[known.length - 1] + TOLERANCE_LOG10);
  }
}
