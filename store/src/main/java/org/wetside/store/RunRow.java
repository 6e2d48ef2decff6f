package org.wetside.store;

import java.time.Instant;
import java.util.Optional;
import org.wetside.core.run.Phase;

/**
 * What stands in a run's own row beside its events, and how they are numbered: what a check holds
 * against the fold.
 *
 * @param id its number
 * @param phase as its last event left it
 * @param startedAt the first pour
 * @param endedAt finished or given up
 * @param events how many
 * @param lastEvent number of the last; the same when none is missing
 * @param steps how many
 * @param lastStep place of the last, counted from 0; one less when none is missing
 */
public record RunRow(
    long id,
    Phase phase,
    Optional<Instant> startedAt,
    Optional<Instant> endedAt,
    long events,
    long lastEvent,
    long steps,
    long lastStep) {

  static final String SELECT =
      "SELECT id, phase, started_at, ended_at,"
          + " (SELECT count(*) FROM run_event WHERE run_id = run.id) AS events,"
          + " (SELECT coalesce(max(sequence), 0) FROM run_event WHERE run_id = run.id) AS last_event,"
          + " (SELECT count(*) FROM run_step WHERE run_id = run.id) AS steps,"
          + " (SELECT coalesce(max(position), -1) FROM run_step WHERE run_id = run.id) AS last_step"
          + " FROM run";

  static RunRow read(Row row) {
    return new RunRow(
        row.whole("id"),
        Phase.fromWord(row.text("phase")),
        row.maybeMoment("started_at"),
        row.maybeMoment("ended_at"),
        row.whole("events"),
        row.whole("last_event"),
        row.whole("steps"),
        row.whole("last_step"));
  }
}
