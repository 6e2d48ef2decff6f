package org.wetside.core.shelf;

import org.wetside.core.source.Standing;

/**
 * Why a bottle may be used or not.
 *
 * @param verdict what it speaks for
 * @param ground what it is about
 * @param words in a sentence part, for people
 * @param source where the rule stands, or who said it
 * @param standing how that is known
 */
public record Reason(
    Verdict.Kind verdict, Ground ground, String words, String source, Standing standing) {
  /** What a reason is about. */
  public enum Ground {
    /** How long ago it was mixed or opened, and how it was kept. */
    AGE("age"),
    /** How much film went through it. */
    CAPACITY("capacity"),
    /** What a test showed. */
    TEST("test"),
    /** What a person wrote on the bottle. */
    LABEL("label"),
    /** What the bottle is for. */
    ROLE("role"),
    /** What a mishap left in doubt. */
    MISHAP("mishap"),
    /** That it was discarded. */
    LEDGER("book");

    private final String word;

    Ground(String word) {
      this.word = word;
    }

    /** The word shown. */
    public String word() {
      return word;
    }
  }
}
