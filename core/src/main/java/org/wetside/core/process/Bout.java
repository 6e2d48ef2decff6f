package org.wetside.core.process;

import java.time.Duration;

/**
 * One bout of agitation at its place in a step.
 *
 * @param inStep when it begins, on the step's own clock
 * @param length how long it takes
 * @param count turns in it; 0 when the movement has no end of its own (continuous, rotary)
 * @param counted whether the person counts turns rather than seconds
 */
public record Bout(Duration inStep, Duration length, int count, boolean counted) {
  /** When it is over, on the step's own clock. */
  public Duration end() {
    return inStep.plus(length);
  }
}
