package org.wetside.core.thermal;

import java.time.Duration;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;

/**
 * A bath that has to be at its temperature when it is poured.
 *
 * @param name as it is called at the sink, for example {@code Fixer, bottle F}
 * @param fills how often the tank is filled with it, at least 1
 * @param volume of one fill
 * @param target what it should have
 * @param band what it may have
 * @param pouredAfter how long after the first pour of the run it is first poured
 * @param made from water, or ready in its bottle
 */
public record BathWanted(
    String name,
    int fills,
    Volume volume,
    Temperature target,
    TemperatureRange band,
    Duration pouredAfter,
    Making made) {

  /** How it comes about: {@link FromWater} or {@link InBottle}. */
  public sealed interface Making permits FromWater, InBottle {}

  /**
   * Water, with so much concentrate or stock counted into the volume.
   *
   * @param concentrate volume of it; nothing for plain water
   * @param has its temperature
   */
  public record FromWater(Volume concentrate, Temperature has) implements Making {}

  /**
   * Ready to pour; it is warmed or cooled by standing in water.
   *
   * @param has its temperature
   */
  public record InBottle(Temperature has) implements Making {}
}
