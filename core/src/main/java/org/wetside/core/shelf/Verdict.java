package org.wetside.core.shelf;

import java.util.Comparator;
import java.util.List;

/**
 * Whether a bottle is to be used, with every reason, the gravest first.
 *
 * @param kind the gravest of its reasons
 * @param reasons at least one
 */
public record Verdict(Kind kind, List<Reason> reasons) {
  /** What to do with a bottle, the graver the later. */
  public enum Kind {
    /** Nothing that is known speaks against it. */
    USE("use"),
    /** Try it out before film is trusted to it. */
    TEST_FIRST("test first"),
    /** A mishap may have spoilt it: first decide. */
    DO_NOT_USE("do not use"),
    /** It is spent, too old or unsafe. */
    DISCARD("discard");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The words shown. */
    public String word() {
      return word;
    }
  }

  public Verdict {
    reasons = List.copyOf(reasons);
  }

  /** The verdict that reasons come to; of none, there would be nothing to say. */
  static Verdict of(List<Reason> reasons) {
    List<Reason> sorted =
        reasons.stream().sorted(Comparator.comparing(Reason::verdict).reversed()).toList();
    return new Verdict(sorted.get(0).verdict(), sorted);
  }

  /** The gravest reason. */
  public Reason first() {
    return reasons.get(0);
  }
}
