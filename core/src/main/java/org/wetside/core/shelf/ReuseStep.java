package org.wetside.core.shelf;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One row of a maker's table of times by roll number in one bath.
 *
 * @param developer name of the developer
 * @param dilution as printed
 * @param film name of the film
 * @param format as printed
 * @param index exposure index of the table
 * @param volume volume of the bath the table is for
 * @param from first roll
 * @param to last roll
 * @param time development time; empty where the table has none any more
 * @param temperature of the bath
 * @param standing how it is known
 * @param citation where it stands
 */
public record ReuseStep(
    String developer,
    String dilution,
    String film,
    String format,
    ExposureIndex index,
    Volume volume,
    int from,
    int to,
    Optional<Duration> time,
    Temperature temperature,
    Standing standing,
    Citation citation) {}
