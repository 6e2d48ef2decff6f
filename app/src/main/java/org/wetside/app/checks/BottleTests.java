package org.wetside.app.checks;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathTest;
import org.wetside.core.bath.BottleEntry;

/** What a bottle's book says of a test. */
final class BottleTests {
  /** A test is believed for this long (common practice: the same evening or the one before). */
  static final Duration BELIEVED = Duration.ofHours(48);

  private BottleTests() {}

  /** The last line of that test since the bottle was last filled or topped up. */
  static Optional<BottleEntry> last(List<BottleEntry> book, BathTest test) {
    Optional<BottleEntry> found = Optional.empty();
    for (BottleEntry entry : book) {
      if (isOf(entry, test)) {
        found = Optional.of(entry);
      } else if (entry.kind() == BottleEntry.Kind.FILLED
          || entry.kind() == BottleEntry.Kind.TOPPED_UP) {
        found = Optional.empty();
      }
    }
    return found;
  }

  static boolean passed(BottleEntry line) {
    return line.kind() == BottleEntry.Kind.LEADER_TEST_PASSED
        || line.kind() == BottleEntry.Kind.CLIP_TEST_PASSED;
  }

  /** Whether the test was passed, and lately enough to be believed. */
  static boolean vouches(Optional<BottleEntry> last, Instant now) {
    return last.filter(line -> passed(line) && !line.at().plus(BELIEVED).isBefore(now)).isPresent();
  }

  private static boolean isOf(BottleEntry entry, BathTest test) {
    return entry.kind() == BottleEntry.Kind.ofTest(test, true)
        || entry.kind() == BottleEntry.Kind.ofTest(test, false);
  }
}
