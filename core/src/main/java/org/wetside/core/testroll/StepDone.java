package org.wetside.core.testroll;

import java.time.Instant;

/**
 * That a step was done.
 *
 * @param at when it was ticked
 * @param note in the user's words; empty for none
 */
public record StepDone(Instant at, String note) {}
