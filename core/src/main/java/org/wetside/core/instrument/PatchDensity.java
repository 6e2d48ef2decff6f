package org.wetside.core.instrument;

/** The density of a patch, or why there is none. */
public sealed interface PatchDensity {
  /**
   * It was read.
   *
   * @param density gross, as the tablet's densities are [-]
   */
  record Read(double density) implements PatchDensity {}

  /**
   * It was not.
   *
   * @param reason in words
   */
  record NotRead(String reason) implements PatchDensity {}
}
