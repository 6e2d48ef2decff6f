package org.wetside.core.wash;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.Volume;

/**
 * One filling of the tank with fresh water, standing or with water running through it.
 *
 * @param water poured in, above 0 to 100 L
 * @param dwell how long it stays before it is drained, 0 to 24 h
 * @param flow what runs through meanwhile, 0 to 100 L/min
 */
public record WaterChange(Volume water, Duration dwell, FlowRate flow) {
  /** Above this it is no tank at home. */
  private static final Volume LARGEST = Volume.ofLitres(100);

  private static final Duration LONGEST = Duration.ofHours(24);
  private static final FlowRate FASTEST = FlowRate.ofLitresPerMinute(100);

  public WaterChange {
    if (water.millilitres() <= 0 || water.compareTo(LARGEST) > 0) {
      throw new BadValueException("water for one fill", water.toString(), "above 0 mL, to 100 L");
    }
    if (dwell.isNegative() || dwell.compareTo(LONGEST) > 0) {
      throw new BadValueException(
          "time in one fill", dwell.toSeconds() + " s", "between 0 s and 24 h");
    }
    if (flow.compareTo(FASTEST) > 0) {
      throw new BadValueException("flow of water", flow.toString(), "at most " + FASTEST);
    }
  }

  /** A fill that stands. */
  public static WaterChange standing(Volume water, Duration dwell) {
    return new WaterChange(water, dwell, FlowRate.NONE);
  }

  /** All the water it takes. */
  public Volume used() {
    return water.plus(flow.during(dwell));
  }
}
