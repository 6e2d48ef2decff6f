package org.wetside.app.bench;

import org.wetside.core.run.Outcome;

/**
 * What became of an event, and where the run stands now.
 *
 * @param outcome applied, noted, asks or refused
 * @param snapshot the run after it
 */
public record Answer(Outcome outcome, BenchSnapshot snapshot) {}
