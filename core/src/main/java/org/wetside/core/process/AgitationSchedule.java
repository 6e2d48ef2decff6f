package org.wetside.core.process;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;

/**
 * When the tank is moved during a step.
 *
 * @param manner how
 * @param initial the bout that begins when the tank is full; empty for none
 * @param interval from the beginning of one cycle to the beginning of the next, counted from the
 *     tank being full; zero when there are no cycles
 * @param cycle what is done at each interval (once, half way, for semi-stand); empty for none
 * @param tap whether the tank is tapped after each bout, against air bells
 * @param revolutionsPerMinute speed of a rotary drum, 0 when it is not one
 */
public record AgitationSchedule(
    Manner manner,
    Optional<Cycle> initial,
    Duration interval,
    Optional<Cycle> cycle,
    boolean tap,
    double revolutionsPerMinute) {
  public AgitationSchedule {
    if (interval.isNegative()) {
      throw new BadValueException("agitation interval", Words.seconds(interval), "0 s or more");
    }
    boolean repeats = manner == Manner.INVERSION || manner == Manner.FILM_LIFT;
    if (repeats && cycle.isPresent() && interval.compareTo(cycle.get().length()) < 0) {
      throw new BadValueException(
          "agitation interval",
          Words.seconds(interval),
          "at least the " + Words.seconds(cycle.get().length()) + " its cycle takes");
    }
    if (!(revolutionsPerMinute >= 0 && revolutionsPerMinute <= 300)) {
      throw new BadValueException(
          "rotary speed", revolutionsPerMinute + " rev/min", "between 0 and 300 rev/min");
    }
    revolutionsPerMinute += 0.0;
  }

  /** Nothing is moved. */
  public static AgitationSchedule none() {
    return of(Manner.NONE, Optional.empty(), Duration.ZERO, Optional.empty(), false);
  }

  /** All the time, by hand. */
  public static AgitationSchedule continuous() {
    return of(Manner.CONTINUOUS, Optional.empty(), Duration.ZERO, Optional.empty(), false);
  }

  /** On rollers, at a speed in revolutions per minute. */
  public static AgitationSchedule rotary(double revolutionsPerMinute) {
    return new AgitationSchedule(
        Manner.ROTARY,
        Optional.empty(),
        Duration.ZERO,
        Optional.empty(),
        false,
        revolutionsPerMinute);
  }

  /** An initial bout, then a cycle at each interval. */
  public static AgitationSchedule intervals(
      Manner manner, Cycle initial, Duration interval, Cycle cycle, boolean tap) {
    return of(manner, Optional.of(initial), interval, Optional.of(cycle), tap);
  }

  private static AgitationSchedule of(
      Manner manner,
      Optional<Cycle> initial,
      Duration interval,
      Optional<Cycle> cycle,
      boolean tap) {
    return new AgitationSchedule(manner, initial, interval, cycle, tap, 0);
  }
}
