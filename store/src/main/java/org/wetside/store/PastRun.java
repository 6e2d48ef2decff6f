package org.wetside.store;

import java.time.Instant;
import org.wetside.core.run.Phase;

/**
 * A run that is over, in short.
 *
 * @param id its identity
 * @param tank name of its tank
 * @param described what the tank was like; empty where nobody wrote it down
 * @param phase finished or abandoned
 * @param endedAt when it was over
 */
public record PastRun(long id, String tank, String described, Phase phase, Instant endedAt) {
  static PastRun read(Row row) {
    return new PastRun(
        row.whole("id"),
        row.text("tank"),
        row.maybeText("tank_described").orElse(""),
        Phase.fromWord(row.text("phase")),
        row.moment("ended_at"));
  }
}
