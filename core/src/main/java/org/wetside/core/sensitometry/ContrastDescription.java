package org.wetside.core.sensitometry;

import java.util.List;

/**
 * Whether contrast against time follows a {@link Saturation}: {@link Described} or {@link Refused}.
 * It describes; the time for a contrast is always read from the points.
 */
public sealed interface ContrastDescription
    permits ContrastDescription.Described, ContrastDescription.Refused {
  /**
   * The exponential goes through the points.
   *
   * @param saturation the parameters
   * @param standardErrors of them, in their units
   * @param residual standard deviation of what is left of the points [-]
   * @param warnings what speaks against it all the same
   */
  record Described(
      Saturation saturation, Saturation standardErrors, double residual, List<String> warnings)
      implements ContrastDescription {
    public Described {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The exponential does not describe the points.
   *
   * @param reason why, in words
   */
  record Refused(String reason) implements ContrastDescription {}

  /** Tries the exponential on the points. */
  static ContrastDescription of(List<ContrastPoint> points) {
    return new SaturationFitter(points).describe();
  }
}
