package org.wetside.core.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.bath.BathKind;

/**
 * What the tests of a bottle say for it at a moment: one that was passed is believed for two days.
 *
 * @param bottle the bottle
 * @param now the moment
 */
record Vouched(Bottle bottle, Instant now) {
  /** Its last tests that still say something. */
  List<TestSeen> tests() {
    List<TestSeen> tests = new ArrayList<>();
    bottle.state().leader().ifPresent(tests::add);
    bottle.state().proof().ifPresent(tests::add);
    return tests;
  }

  /** Whether it is recent enough. */
  boolean believed(TestSeen test) {
    return !test.at().plus(TestSeen.BELIEVED).isBefore(now);
  }

  /** Whether a test was passed that is still believed. */
  boolean lately() {
    return tests().stream().anyMatch(test -> test.passed() && believed(test));
  }

  /** A doubt, which such a test settles. */
  Verdict.Kind unlessVouched() {
    return lately() ? Verdict.Kind.USE : Verdict.Kind.TEST_FIRST;
  }

  /** Whether there is a test for what is in it. */
  boolean canBeTested() {
    BathKind bath = bottle.label().bath();
    return bath == BathKind.DEVELOPER || FilmUse.fixes(bath);
  }
}
