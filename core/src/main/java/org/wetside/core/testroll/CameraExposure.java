package org.wetside.core.testroll;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Stops;

/**
 * What is set on a camera for one frame.
 *
 * @param shutter how long
 * @param aperture how wide
 */
public record CameraExposure(Shutter shutter, Aperture aperture) {
  /**
   * Reads {@code 1/60@f8} or {@code 1/60 at f/8}.
   *
   * @param thing what is being given, for the message
   * @throws BadValueException when it is no such pair, or a mark that is on no dial
   */
  public static CameraExposure parse(String thing, String text) {
    String[] pair = text.strip().split("\\s*@\\s*|\\s+at\\s+", -1);
    if (pair.length != 2) {
      throw new BadValueException(
          thing, text.strip(), "shutter speed and aperture, for example 1/60@f8");
    }
    return new CameraExposure(Shutter.parse(pair[0]), Aperture.parse(pair[1]));
  }

  /** How much more light it lets through than the other; negative for less. Exact. */
  public Stops stopsMoreThan(CameraExposure other) {
    return Stops.ofThirds(other.thirds() - thirds());
  }

  /** Thirds of a stop less than 1 s at f/1. */
  int thirds() {
    return shutter.thirds() + aperture.thirds();
  }

  /** For example {@code 1/60 at f/8}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return shutter + " at " + aperture;
  }
}
