package org.wetside.core.run;

import java.time.Instant;

/**
 * A moment that has been recorded.
 *
 * @param at when
 * @param how who set it
 * @param by the screen, or the conductor
 */
public record Mark(Instant at, Known how, String by) {
  /** How a moment is known. */
  public enum Known {
    /** A person pressed a key. */
    PRESSED("pressed"),
    /** The conductor wrote it because the plan said so. */
    PLANNED("planned"),
    /** Follows from a press at another moment. */
    INFERRED("inferred");

    private final String word;

    Known(String word) {
      this.word = word;
    }

    /** The word shown to people and written to JSON. */
    public String word() {
      return word;
    }
  }

  /** As an event says it. */
  static Mark of(RunEvent event) {
    return new Mark(
        event.occurredAt(), event.what().planned() ? Known.PLANNED : Known.PRESSED, event.screen());
  }

  /** Following from an event at another moment. */
  static Mark inferred(Instant at, RunEvent from) {
    return new Mark(at, Known.INFERRED, from.screen());
  }

  /** Whether a person pressed it. */
  public boolean pressed() {
    return how == Known.PRESSED;
  }
}
