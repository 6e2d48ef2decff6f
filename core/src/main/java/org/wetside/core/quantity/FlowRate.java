package org.wetside.core.quantity;

import java.time.Duration;

/**
 * Water that runs through a vessel.
 *
 * @param litresPerMinute litres in a minute, at least 0
 */
public record FlowRate(double litresPerMinute) implements Comparable<FlowRate> {
  /** Standing water. */
  public static final FlowRate NONE = new FlowRate(0);

  public FlowRate {
    litresPerMinute = Finite.requireAtLeast(litresPerMinute, 0, "flow of water", "L/min");
  }

  /** From litres per minute. */
  public static FlowRate ofLitresPerMinute(double litresPerMinute) {
    return new FlowRate(litresPerMinute);
  }

  /**
   * The flow that gives so much water in a time.
   *
   * @throws BadValueException when the time is 0
   */
  public static FlowRate of(Volume water, Duration time) {
    return new FlowRate(water.millilitres() / 1000.0 / (TimeSpan.toSeconds(time) / 60.0));
  }

  /**
   * Reads {@code 1.5L/min}, {@code 800 mL/min}, and what {@link #toString} prints.
   *
   * @throws BadValueException without a unit, with an unknown one, or negative
   */
  public static FlowRate parse(String text) {
    Written written = Written.parse("flow of water", text, "1.5L/min");
    return switch (written.unit()) {
      case "l/min" -> ofLitresPerMinute(written.number());
      case "ml/min" -> ofLitresPerMinute(written.number() / 1000.0);
      default ->
          throw new BadValueException(
              "flow of water", text, "say the unit, L/min or mL/min, for example 1.5L/min");
    };
  }

  /** How much runs through in a time. */
  public Volume during(Duration time) {
    return Volume.ofLitres(litresPerMinute * TimeSpan.toSeconds(time) / 60.0);
  }

  @Override
  public int compareTo(FlowRate other) {
    return Double.compare(litresPerMinute, other.litresPerMinute);
  }

  /** For example {@code 1.5 L/min}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return Finite.plain(litresPerMinute) + " L/min";
  }
}
