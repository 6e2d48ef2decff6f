package org.wetside.core.trial;

import java.util.List;
import java.util.OptionalDouble;

/** What came of a test. */
public sealed interface TrialOutcome {
  /** The word shown and stored. */
  String word();

  /**
   * It does what it should.
   *
   * @param timesBaseline how many times as long as in fresh solution it took; empty where no time
   *     is compared
   */
  record Passed(OptionalDouble timesBaseline) implements TrialOutcome {
    @Override
    public String word() {
      return "passed";
    }
  }

  /**
   * It does not.
   *
   * @param timesBaseline how many times as long as in fresh solution it took, or was waited for;
   *     empty where no time is compared
   */
  record Failed(OptionalDouble timesBaseline) implements TrialOutcome {
    @Override
    public String word() {
      return "failed";
    }
  }

  /** The first time in fresh solution, which later ones are compared with. */
  record BaselineMade() implements TrialOutcome {
    @Override
    public String word() {
      return "baseline made";
    }
  }

  /**
   * A time was taken that nothing can be compared with.
   *
   * @param why what is in the way, in words, at least one
   */
  record NotComparable(List<String> why) implements TrialOutcome {
    public NotComparable {
      why = List.copyOf(why);
    }

    @Override
    public String word() {
      return "not comparable";
    }
  }

  /**
   * Nothing can be said.
   *
   * @param reason why
   */
  record NotJudged(String reason) implements TrialOutcome {
    @Override
    public String word() {
      return "not judged";
    }
  }
}
