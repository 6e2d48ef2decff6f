package org.wetside.core.learning;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How a judged roll was developed, and what its maker's time would have been.
 *
 * @param at when the run was over
 * @param lasted development time it is worth at the planned temperature; empty when not recorded
 * @param makers the time that is printed, or follows from what is printed, for just that, without
 *     any factor of the user's; empty when there is no honest one
 * @param makersSource where it is from, or why there is none
 * @param contrast what a measured contrast is held against; empty when there is no series
 * @param whyNoContrast why not; empty with a series
 */
public record Developed(
    Instant at,
    Optional<Duration> lasted,
    Optional<Duration> makers,
    String makersSource,
    Optional<ContrastBasis> contrast,
    String whyNoContrast) {
  /** ln of how much longer than the maker's time it was developed. */
  Optional<Double> lnAlready() {
    return lasted.flatMap(
        really -> makers.map(printed -> Math.log((double) really.toMillis() / printed.toMillis())));
  }
}
