package org.wetside.core.bath;

import java.time.Instant;
import org.wetside.core.quantity.BadValueException;

/**
 * One line in a bottle's book. Lines are added and never changed; a mistake is answered by a
 * correcting line.
 *
 * @param kind what happened
 * @param changeMillilitres how much more is in the bottle after it; negative for less
 * @param film film that went through it
 * @param run the run it belongs to; empty when it was done by hand
 * @param at when it happened
 * @param note in words; may be empty
 */
public record BottleEntry(
    Kind kind, double changeMillilitres, UnitOfUse film, String run, Instant at, String note) {

  /** What can happen to a bottle. */
  public enum Kind {
    /** First filled, or bought. */
    FILLED("filled"),
    /** Opened for the first time. */
    OPENED("opened"),
    /** Taken out for a tank or a mix. */
    TAKEN("taken out"),
    /** Poured back after use. */
    RETURNED("poured back"),
    /** Fresh solution or replenisher added. */
    TOPPED_UP("topped up"),
    /** A leader turned black in it in room light. */
    LEADER_TEST_PASSED("leader test passed"),
    /** A leader did not turn black in it. */
    LEADER_TEST_FAILED("leader test failed"),
    /** A clip of film cleared in it in time. */
    CLIP_TEST_PASSED("clip test passed"),
    /** A clip of film did not clear in it in time. */
    CLIP_TEST_FAILED("clip test failed"),
    /** The book put right after looking. */
    CORRECTED("corrected"),
    /** Emptied and off the shelf. */
    DISCARDED("discarded");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word shown and stored. */
    public String word() {
      return word;
    }

    /** The line of a test and what it showed. */
    public static Kind ofTest(BathTest test, boolean passed) {
      if (test == BathTest.LEADER) {
        return passed ? LEADER_TEST_PASSED : LEADER_TEST_FAILED;
      }
      return passed ? CLIP_TEST_PASSED : CLIP_TEST_FAILED;
    }

    /** Reads {@link #word()} back. */
    public static Kind fromWord(String word) {
      for (Kind kind : values()) {
        if (kind.word.equals(word)) {
          return kind;
        }
      }
      throw new IllegalArgumentException("no such entry in a bottle's book: " + word);
    }
  }

  public BottleEntry {
    if (!Double.isFinite(changeMillilitres)) {
      throw new BadValueException("volume", changeMillilitres + " mL", "it must be finite");
    }
    changeMillilitres += 0.0;
  }
}
