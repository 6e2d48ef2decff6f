package org.wetside.app.checks;

import java.time.Instant;
import java.util.Optional;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.TestSeen;

/** What a bottle's ledger says of a test. */
final class BottleTests {
  private BottleTests() {}

  /** The last test of that sort that still says something of what is in the bottle. */
  static Optional<TestSeen> last(Bottle bottle, BathTest test) {
    return test.ofFixer() ? bottle.state().proof() : bottle.state().leader();
  }

  /** Whether the test was passed, and lately enough to be believed. */
  static boolean vouches(Optional<TestSeen> last, Instant now) {
    return last.filter(test -> test.passed() && !test.at().plus(TestSeen.BELIEVED).isBefore(now))
        .isPresent();
  }
}
