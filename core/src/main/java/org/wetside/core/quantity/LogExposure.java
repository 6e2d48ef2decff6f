package org.wetside.core.quantity;

/**
 * What fell on a film, as the logarithm to base 10 of lux seconds. Where the light was never
 * calibrated only differences mean anything; whoever holds the value says which it is.
 *
 * @param log10LuxSeconds log10(lx·s), any finite number
 */
public record LogExposure(double log10LuxSeconds) implements Comparable<LogExposure> {
  public LogExposure {
    log10LuxSeconds = Finite.require(log10LuxSeconds, "log exposure", "log10 lx·s");
  }

  /** From the logarithm, for example -2.40. */
  public static LogExposure ofLog10LuxSeconds(double log10LuxSeconds) {
    return new LogExposure(log10LuxSeconds);
  }

  /**
   * From lux seconds.
   *
   * @throws BadValueException for 0 or less
   */
  public static LogExposure fromLuxSeconds(double luxSeconds) {
    return new LogExposure(Math.log10(Finite.requireAbove(luxSeconds, 0, "exposure", "lx·s")));
  }

  /** The exposure so many stops more; fewer with a negative count. */
  public LogExposure plus(Stops stops) {
    return new LogExposure(log10LuxSeconds + stops.count() * Math.log10(2));
  }

  /** The exposure behind a step of a tablet that has this density. */
  public LogExposure behind(OpticalDensity step) {
    return new LogExposure(log10LuxSeconds - step.value());
  }

  @Override
  public int compareTo(LogExposure other) {
    return Double.compare(log10LuxSeconds, other.log10LuxSeconds);
  }
}
