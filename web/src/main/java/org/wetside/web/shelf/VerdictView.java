package org.wetside.web.shelf;

import java.util.List;
import org.wetside.core.shelf.Reason;
import org.wetside.core.shelf.Verdict;

/**
 * Whether to use a bottle, and why.
 *
 * @param verdict use, test first or discard
 * @param reasons the gravest first; never empty
 */
public record VerdictView(String verdict, List<ReasonView> reasons) {
  /**
   * One reason.
   *
   * @param verdict what it speaks for
   * @param about age, capacity, test, label, role or book
   * @param words for people
   * @param source where the rule stands, or who said it
   * @param standing how that is known
   */
  public record ReasonView(
      String verdict, String about, String words, String source, String standing) {
    static ReasonView of(Reason reason) {
      return new ReasonView(
          reason.verdict().word(),
          reason.ground().word(),
          reason.words(),
          reason.source(),
          reason.standing().word());
    }
  }

  /** The gravest reason as a sentence begins. */
  public String firstWords() {
    String words = reasons.get(0).words();
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Whether the gravest reason is its age, so that it need not be said twice. */
  boolean saysAge() {
    return reasons.get(0).about().equals(Reason.Ground.AGE.word());
  }

  /** The view of a verdict. */
  static VerdictView of(Verdict verdict) {
    return new VerdictView(
        verdict.kind().word(), verdict.reasons().stream().map(ReasonView::of).toList());
  }
}
