package org.wetside.core.trial;

import java.time.Duration;
import java.time.Instant;

/**
 * The end of a test.
 *
 * @param at when it was judged
 * @param took how long it ran
 * @param outcome what came of it
 * @param note in words; may be empty
 */
public record TrialEnd(Instant at, Duration took, TrialOutcome outcome, String note) {}
