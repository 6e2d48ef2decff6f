package org.wetside.app.bench;

import java.time.Instant;
import java.util.Optional;
import org.wetside.core.run.Happening;

/**
 * What a screen sends.
 *
 * @param id made by the screen; a repeat is answered as before and stored once
 * @param step index of the step it refers to; empty for what concerns the whole run
 * @param what what happened; a reading comes raw, its correction is added here
 * @param occurredAt the screen's moment, corrected by its measured offset
 * @param screen the screen's name
 * @param key the key that was pressed; may be empty
 */
public record SentEvent(
    String id,
    Optional<Integer> step,
    Happening what,
    Instant occurredAt,
    String screen,
    String key) {
  /** The same, saying it more exactly. */
  SentEvent saying(Happening other) {
    return new SentEvent(id, step, other, occurredAt, screen, key);
  }
}
