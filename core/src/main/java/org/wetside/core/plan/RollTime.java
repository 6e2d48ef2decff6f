package org.wetside.core.plan;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.source.Standing;

/**
 * A roll that asks to share a tank.
 *
 * @param roll the roll
 * @param time its own time in the developer of the load; empty when there is no honest one
 * @param standing standing of that time; present with it
 * @param contrastSlope how contrast follows time, d ln g / d ln t [-], where a series of that film
 *     and developer exists
 */
public record RollTime(
    Roll roll,
    Optional<Duration> time,
    Optional<Standing> standing,
    Optional<Double> contrastSlope) {}
