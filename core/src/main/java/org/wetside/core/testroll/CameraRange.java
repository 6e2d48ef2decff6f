package org.wetside.core.testroll;

import org.wetside.core.quantity.BadValueException;

/**
 * What a camera and its lens can be set to.
 *
 * @param fastest shutter speed to use
 * @param slowest shutter speed to use; not longer than {@link #LONGEST}
 * @param widest aperture to use
 * @param smallest aperture to use
 */
public record CameraRange(Shutter fastest, Shutter slowest, Aperture widest, Aperture smallest) {
  /**
   * Above this a film answers longer exposures with less than their share (reciprocity departure),
   * which would bend the curve; common practice.
   */
  public static final Shutter LONGEST = Shutter.parse("1/2");

  /** What most cameras with a lens of normal length can do. */
  public static final CameraRange USUAL =
      new CameraRange(
          Shutter.parse("1/1000"), LONGEST, Aperture.parse("f/2"), Aperture.parse("f/16"));

  /**
   * Checks the ends.
   *
   * @throws BadValueException naming an end that is out of order or an exposure too long
   */
  public CameraRange {
    if (slowest.compareTo(LONGEST) < 0) {
      throw new BadValueException(
          "slowest shutter speed",
          slowest + " s",
          "not longer than " + LONGEST + " s: longer exposures count for less (reciprocity)");
    }
    if (fastest.compareTo(slowest) < 0) {
      throw new BadValueException(
          "fastest shutter speed",
          fastest + " s",
          "not slower than the slowest, " + slowest + " s");
    }
    if (smallest.compareTo(widest) < 0) {
      throw new BadValueException(
          "smallest aperture", smallest.toString(), "not wider than the widest, " + widest);
    }
  }

  /** Whether both dials go there. */
  public boolean holds(CameraExposure exposure) {
    return exposure.shutter().compareTo(slowest) >= 0
        && exposure.shutter().compareTo(fastest) <= 0
        && exposure.aperture().compareTo(widest) >= 0
        && exposure.aperture().compareTo(smallest) <= 0;
  }

  /** For example {@code 1/2 to 1/1000, f/2 to f/16}. */
  @Override
  public String toString() {
    return slowest + " to " + fastest + ", " + widest + " to " + smallest;
  }
}
