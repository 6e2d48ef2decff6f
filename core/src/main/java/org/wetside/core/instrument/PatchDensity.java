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
   * @param darker whether it is that it is denser than anything the instrument reads
   */
  record NotRead(String reason, boolean darker) implements PatchDensity {
    /** For any other reason than being too dark. */
    public NotRead(String reason) {
      this(reason, false);
    }
  }
}
