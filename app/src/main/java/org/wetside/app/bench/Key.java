package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Moment;

/**
 * Something that may be pressed within a stretch of time.
 *
 * @param role what it is for
 * @param label its words
 * @param from opens; empty for at once
 * @param until closes; empty for never
 * @param kind the event it sends
 * @param step the step the event refers to, where it refers to one
 * @param moment for a step that begins: which moment
 * @param limit for lengthening: the most that can still be added
 */
public record Key(
    Role role,
    String label,
    Optional<Instant> from,
    Optional<Instant> until,
    EventKind kind,
    OptionalInt step,
    Optional<Moment> moment,
    Optional<Duration> limit) {
  /** What a key is for. */
  public enum Role {
    /** The one next step. */
    NEXT("next"),
    /** The last of all: the film hangs. */
    FINISH("finish"),
    /** "Wait for me", or not. */
    WAIT("wait"),
    /** The bath lasts longer. */
    LENGTHEN("lengthen"),
    /** The bath lasts shorter. */
    CUT("cut"),
    /** A thermometer is read. */
    READING("reading"),
    /** Something went wrong. */
    MISHAP("mishap"),
    /** Words for the record. */
    NOTE("note"),
    /** The run is given up. */
    ABANDON("abandon");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /** The word screens know it by. */
    public String word() {
      return word;
    }
  }

  static Key always(Role role, String label, EventKind kind, OptionalInt step) {
    return new Key(
        role,
        label,
        Optional.empty(),
        Optional.empty(),
        kind,
        step,
        Optional.empty(),
        Optional.empty());
  }
}
