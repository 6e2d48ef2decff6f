package org.wetside.core.process;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Standing;

/**
 * One bath of a process, as data.
 *
 * @param kind what it does
 * @param bottle letter of the bottle it comes from; empty for water and light
 * @param duration from tank full to the beginning of the next pour; empty when it depends on the
 *     film and is asked for
 * @param pourIn from the beginning of the pour to tank full
 * @param drainLead how long before the next pour the drain begins
 * @param agitation when the tank is moved
 * @param band temperatures the bath may have; empty when not stated
 * @param afterUse where the liquid goes
 * @param light what light the film may see
 * @param lengthenTo the longest the step may last; empty when it may not be lengthened (a developer
 *     never)
 * @param standing how its values came to be known
 * @param source what they are cited from, and what is to be known of them; may be empty
 */
public record Step(
    StepKind kind,
    Optional<String> bottle,
    Optional<Duration> duration,
    Duration pourIn,
    Duration drainLead,
    AgitationSchedule agitation,
    Optional<TemperatureRange> band,
    AfterUse afterUse,
    Light light,
    Optional<Duration> lengthenTo,
    Standing standing,
    String source) {
  /** Common practice; the handbook says 10–20 s (DV-S12). */
  public static final Duration POUR_IN = Duration.ofSeconds(10);

  /** Common practice; the handbook says 10 s (DV-S12). */
  public static final Duration DRAIN_LEAD = Duration.ofSeconds(15);

  private static final Duration LONGEST = Duration.ofHours(24);

  public Step {
    requireBetween(kind, "pour-in time", pourIn, Duration.ZERO, Duration.ofMinutes(5));
    requireBetween(kind, "drain lead", drainLead, Duration.ZERO, Duration.ofMinutes(5));
    if (duration.isPresent()) {
      requireBetween(kind, "time", duration.get(), Duration.ofSeconds(1), LONGEST);
      if (duration.get().compareTo(drainLead) < 0) {
        throw new BadValueException(
            kind.word() + " time",
            Words.clock(duration.get()),
            "at least the drain lead of " + Words.seconds(drainLead));
      }
    }
    if (lengthenTo.isPresent()) {
      if (kind.developing()) {
        throw new BadValueException(
            kind.word() + " longest time",
            Words.clock(lengthenTo.get()),
            "a developer is never lengthened");
      }
      requireBetween(
          kind, "longest time", lengthenTo.get(), duration.orElse(Duration.ZERO), LONGEST);
    }
  }

  /** The same step lasting a time; the longest it may last follows when that was open. */
  public Step withDuration(Duration time) {
    Optional<Duration> limit =
        lengthenTo.isPresent() && lengthenTo.get().compareTo(time) < 0
            ? Optional.of(time)
            : lengthenTo.or(() -> duration.isPresent() ? lengthenTo : LongestTime.of(kind, time));
    return new Step(
        kind,
        bottle,
        Optional.of(time),
        pourIn,
        drainLead,
        agitation,
        band,
        afterUse,
        light,
        limit,
        standing,
        source);
  }

  /** The same step kept at another temperature. */
  public Step withBand(TemperatureRange wanted) {
    return new Step(
        kind,
        bottle,
        duration,
        pourIn,
        drainLead,
        agitation,
        Optional.of(wanted),
        afterUse,
        light,
        lengthenTo,
        standing,
        source);
  }

  /** The same step from another bottle, going back there if it went back to the old one. */
  public Step withBottle(String letter) {
    AfterUse after =
        afterUse.bottle().isPresent() && afterUse.bottle().equals(bottle)
            ? AfterUse.backTo(letter)
            : afterUse;
    return new Step(
        kind,
        Optional.of(letter),
        duration,
        pourIn,
        drainLead,
        agitation,
        band,
        after,
        light,
        lengthenTo,
        standing,
        source);
  }

  /** The same step with pour-in and drain lead as learned from a tank. */
  public Step withHands(Duration pour, Duration drain) {
    return new Step(
        kind,
        bottle,
        duration,
        pour,
        drain,
        agitation,
        band,
        afterUse,
        light,
        lengthenTo,
        standing,
        source);
  }

  /** The same step from another bottle, its liquid going there after use. */
  public Step withBottle(Optional<String> letter, AfterUse goesTo) {
    return new Step(
        kind,
        letter,
        duration,
        pourIn,
        drainLead,
        agitation,
        band,
        goesTo,
        light,
        lengthenTo,
        standing,
        source);
  }

  private static void requireBetween(
      StepKind kind, String thing, Duration given, Duration low, Duration high) {
    if (given.compareTo(low) < 0 || given.compareTo(high) > 0) {
      throw new BadValueException(
          kind.word() + " " + thing,
          Words.clock(given),
          "between " + Words.clock(low) + " and " + Words.clock(high));
    }
  }
}
