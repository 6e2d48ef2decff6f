package org.wetside.core.learning;

/**
 * One roll of a control chart.
 *
 * @param roll what it said
 * @param expected what was expected of it, from all rolls before it
 * @param residual how far it lies from that, in standard deviations of the expectation
 * @param held the same against what was known before the rolls it is judged together with; equal to
 *     the residual where too few rolls stand before them
 * @param drift what it raises
 */
public record ChartPoint(
    RollSeen roll, double expected, double residual, double held, Drift drift) {
  /** Whether it raises the flag. */
  public boolean isFlagged() {
    return drift != Drift.NONE;
  }
}
